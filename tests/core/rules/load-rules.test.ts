import { describe, expect, it } from 'vitest'
import {
  effectiveJoistSpan,
  governingLoad,
  guardPostMoment,
  guardPostPull,
  heldUpright,
  joistSpanFactor,
  kneeBraceForce,
  loadDuration,
  notchFaults,
  repetitiveFactor,
  soilPressure,
  spanTableLoad,
  squareFeet,
  tipDeflection,
  tributaryLengths,
} from '../../../core/rules/index.ts'
import { feet, inches, psf } from '../../../core/units/index.ts'

describe('loads', () => {
  it('takes live or snow load, whichever is more, and never both', () => {
    expect(governingLoad(psf(40), psf(30))).toBe(40)
    expect(governingLoad(psf(40), psf(60))).toBe(60)
  })

  it('enters the snow pages with a page more for live load, which lasts longer', () => {
    expect([20, 40, 41, 50, 51, 60].map((live) => spanTableLoad(psf(live), psf(0)))).toEqual([
      40, 40, 60, 60, 70, 70,
    ])
    expect(spanTableLoad(psf(61), psf(0))).toBe(Number.POSITIVE_INFINITY)
    expect(spanTableLoad(psf(40), psf(70))).toBe(70)
    expect(spanTableLoad(psf(60), psf(50))).toBe(70)
  })

  it('lasts two months where snow governs, ten years where live load does', () => {
    expect(loadDuration(psf(40), psf(41))).toBe(1.15)
    expect(loadDuration(psf(40), psf(40))).toBe(1)
  })

  it('is shared by three members up to 24 in apart', () => {
    expect([repetitiveFactor(3, 24), repetitiveFactor(2, 16), repetitiveFactor(3, 24.1)]).toEqual([
      1.15, 1, 1,
    ])
  })
})

describe('effective joist span', () => {
  it('is the joist span itself at a quarter, for which the beam table is made', () => {
    expect(effectiveJoistSpan(feet(12), feet(3))).toBe(feet(12))
  })

  it('is the table where that is more than statics, interpolated between its rows', () => {
    expect(joistSpanFactor(0)).toBe(0.66)
    expect(joistSpanFactor(1 / 8)).toBeCloseTo(0.84, 12)
    expect(joistSpanFactor((1 / 8 + 1 / 6) / 2)).toBeCloseTo(0.87, 12)
  })

  it('is statics where the recalled 0.72 of the table would be less', () => {
    expect(joistSpanFactor(1 / 12)).toBeCloseTo((13 / 12) ** 2 / 2 / 0.78125, 12)
    expect(joistSpanFactor(1 / 12)).toBeGreaterThan(0.75)
  })

  it('goes on by statics beyond a quarter', () => {
    expect(joistSpanFactor(0.5)).toBeCloseTo(1.44, 12)
  })

  it('never falls as the cantilever grows', () => {
    for (let share = 0; share < 0.4; share += 0.001) {
      expect(joistSpanFactor(share + 0.001)).toBeGreaterThanOrEqual(joistSpanFactor(share))
    }
  })
})

describe('tributary lengths', () => {
  it('halve the spans, and give overhangs to the end posts', () => {
    expect(tributaryLengths(0, [12, 98, 184, 270], 282)).toEqual([55, 86, 86, 55])
    expect(tributaryLengths(0, [5], 10)).toEqual([10])
    expect(squareFeet(feet(3), feet(4))).toBe(12)
  })
})

describe('lateral support, notches, guard posts', () => {
  it('asks more of a deeper member (NDS 2018 4.4.1.2)', () => {
    const nothing = { ends: false, edge: false, bothEdges: false }
    expect(heldUpright(2, nothing)).toBe(true)
    expect(heldUpright(3, nothing)).toBe(false)
    expect(heldUpright(4, { ...nothing, ends: true })).toBe(true)
    expect(heldUpright(5, { ...nothing, ends: true })).toBe(false)
    expect(heldUpright(6, { ...nothing, ends: true, edge: true })).toBe(true)
    expect(heldUpright(7, { ...nothing, ends: true, edge: true })).toBe(false)
    expect(heldUpright(7, { ends: true, edge: true, bothEdges: true })).toBe(true)
  })

  it('allows a notch of a sixth of the depth and a third of it long, none in the middle third (IRC 2021 R502.8.1)', () => {
    const depth = inches(9)
    expect(notchFaults({ depth: inches(1.5), length: inches(3), at: 'outer third' }, depth)).toEqual([])
    expect(notchFaults({ depth: inches(1.53125), length: inches(3), at: 'outer third' }, depth)).toHaveLength(
      1,
    )
    expect(
      notchFaults({ depth: inches(1.5), length: inches(3.03125), at: 'outer third' }, depth),
    ).toHaveLength(1)
    expect(notchFaults({ depth: inches(2.25), length: inches(9), at: 'end' }, depth)).toEqual([])
    expect(notchFaults({ depth: inches(2.28125), length: inches(1), at: 'end' }, depth)).toHaveLength(1)
    expect(notchFaults({ depth: inches(0.5), length: inches(1), at: 'middle third' }, depth)).toHaveLength(1)
  })

  it('pulls a guard post out by its lever (statics, by hand)', () => {
    expect(guardPostMoment(200, 36)).toBe(7200)
    // about the lower fastener: 200 × (36 + 2 + 5.5) = T × 5.5
    expect(guardPostPull(200, 36, 2, 5.5)).toBeCloseTo((200 * 43.5) / 5.5, 9)
  })
})

describe('statics of single parts', () => {
  // AWC Design Aid 6, overhang with a load at its free end, from memory, recomputed: example BS-05
  it('bend an overhang of 24 in beside a span of 120 in by 0.10135 in under 220 lb at its tip', () => {
    expect(tipDeflection(220, 24, 120, 1_260_000 * 47.63)).toBeCloseTo(0.10135, 5)
  })

  // by hand: 50 lb at 96 in turn by 4,800 in-lb about the foot; the brace's level part is that over 24 in, √2 its length
  it('push 282.8 lb into a brace at 45 degrees', () => {
    expect(kneeBraceForce(50, 96, 24)).toBeCloseTo(282.843, 3)
  })

  // by hand: 2,400 lb on a circle of 17.13 in, 1.6 sq ft, are 1,500 psf
  it('press 1,500 psf on the soil under 2,400 lb on 17.13 in', () => {
    expect(Math.abs(soilPressure(2400, 17.13) - 1500)).toBeLessThan(1)
  })

  // by hand: (1 + 1/2)² ÷ 2 ÷ 0.78125 = 1.44
  it('enter the beam table with 1.44 of the joist span where joists reach half of it beyond', () => {
    expect(effectiveJoistSpan(100, 50)).toBeCloseTo(144, 9)
  })
})
