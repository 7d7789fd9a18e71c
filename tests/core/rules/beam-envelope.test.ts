import { describe, expect, it } from 'vitest'
import {
  type BeamEnvelope,
  type BeamModel,
  continuousEnvelope,
  jointedEnvelope,
  liveLoadPatterns,
  worseEnvelope,
} from '../../../core/rules/index.ts'

// Statics by hand; two spans by AWC Design Aid 6: one of them loaded, 7/16, 10/16 and −1/16 w L at the supports, 49/512 w L²
// in the loaded span and 1/16 over the middle; both loaded, 3/8, 10/8 and 3/8 w L, and 1/8 w L² over the middle.
const beam = (supports: readonly number[], length: number, stiffness = 1e6): BeamModel => ({
  supports,
  length,
  stiffness,
})

describe('the envelope of a continuous beam', () => {
  it('places the live load worst for each support of two spans', () => {
    const { supports, stretches } = continuousEnvelope(beam([0, 100, 200], 200), { dead: 1, live: 1 })
    const [left, middle, right] = supports
    for (const end of [left, right]) {
      expect(end?.greatest).toBeCloseTo(37.5 + 43.75, 9)
      expect(end?.least).toBeCloseTo(37.5 - 6.25, 9)
      expect(end?.greatestLive).toBeCloseTo(43.75, 9)
    }
    expect([left?.at, middle?.at, right?.at]).toEqual([0, 100, 200])
    expect(middle?.greatest).toBeCloseTo(250, 9)
    expect(middle?.least).toBeCloseTo(125, 9)
    expect(middle?.greatestLive).toBeCloseTo(125, 9)
    expect(stretches.map(({ kind, from, to }) => [kind, from, to])).toEqual([
      ['span', 0, 100],
      ['span', 100, 200],
    ])
    for (const { moment, shear } of stretches) {
      expect(moment).toBeCloseTo(2 * 1250, 9)
      expect(shear).toBeCloseTo(2 * 62.5, 9)
    }
  })

  it('lets an overhang sag the most with both overhangs loaded and the span bare', () => {
    const { stretches } = continuousEnvelope(beam([20, 120], 140), { dead: 0, live: 1 })
    expect(stretches.map(({ kind, from, to }) => [kind, from, to])).toEqual([
      ['overhang', 0, 20],
      ['span', 20, 120],
      ['overhang', 120, 140],
    ])
    // by hand: w a³ (4 L + 3 a) / 24 E I for its own load, a × (w a² / 2) × L / 6 E I for the other's
    const tip = ((20 ** 3 * (400 + 60)) / 24 + (20 * 200 * 100) / 6) / 1e6
    // by hand: the span alone, 5 w L⁴ / 384 E I
    const sag = (5 * 100 ** 4) / 384 / 1e6
    for (const [i, expected] of [tip, sag, tip].entries())
      expect(stretches[i]?.deflection).toBeCloseTo(expected, 6)
    // by hand: of an overhang w a² / 2 and w a; of the span w L² / 8, and half of it with what one overhang turns, 200 ÷ 100
    const forces = stretches.map(({ moment, shear }) => [moment, shear])
    for (const [i, [moment, shear]] of (
      [
        [200, 20],
        [1250, 52],
        [200, 20],
      ] as const
    ).entries()) {
      expect(forces[i]?.[0]).toBeCloseTo(moment, 9)
      expect(forces[i]?.[1]).toBeCloseTo(shear, 9)
    }
  })

  it('counts a span that rises as one that sags, and no overhang that rises', () => {
    const short = continuousEnvelope(beam([40, 60], 100), { dead: 0, live: 1 })
    // by hand: both overhangs bend the span up, M L² / 8 E I with M = 800; loaded itself it sags by 5 × 20⁴ / 384 only
    expect(short.stretches[1]?.deflection).toBeCloseTo((800 * 400) / 8 / 1e6, 6)
    const long = continuousEnvelope(beam([10, 110], 120), { dead: 0, live: 1 })
    // by hand: the loaded span tips it up by w L³ a / 24; down it goes by 26,250 ÷ E I
    expect(long.stretches[0]?.deflection).toBeCloseTo(((10 ** 3 * 430) / 24 + (10 * 50 * 100) / 6) / 1e6, 6)
  })
})

describe('the envelope of a beam jointed over every inner support', () => {
  it('is that of simple spans, overhangs with the end spans', () => {
    const { supports, stretches } = jointedEnvelope(beam([20, 120, 220, 320], 340), { dead: 1, live: 1 })
    // by hand: an end carries (100 + 20)² / 200 of w; an inner support beside it half a span, less 2 by the overhang
    const [left, second, third, right] = supports
    for (const end of [left, right]) {
      expect(end?.greatest).toBeCloseTo(2 * 72, 9)
      expect(end?.least).toBeCloseTo(72, 9)
      expect(end?.greatestLive).toBeCloseTo(72, 9)
    }
    for (const inner of [second, third]) {
      expect(inner?.greatest).toBeCloseTo(98 + 100, 9)
      expect(inner?.least).toBeCloseTo(98 - 2, 9)
      expect(inner?.greatestLive).toBeCloseTo(100, 9)
    }
    expect(supports.map(({ at }) => at)).toEqual([20, 120, 220, 320])
    expect(stretches.map(({ kind, from, to }) => [kind, from, to])).toEqual([
      ['overhang', 0, 20],
      ['span', 20, 120],
      ['span', 120, 220],
      ['span', 220, 320],
      ['overhang', 320, 340],
    ])
    // by hand: w L² / 8 of the middle one, of dead and live load
    expect(stretches[2]?.moment).toBeCloseTo(2500, 9)
  })
})

describe('the worse of two envelopes', () => {
  it('takes each value from where it is worse', () => {
    const stretch = { kind: 'span', from: 0, to: 10 } as const
    const a: BeamEnvelope = {
      stretches: [{ ...stretch, moment: 1, shear: 20, deflection: 3 }],
      supports: [{ at: 0, greatest: 5, least: -1, greatestLive: 4 }],
    }
    const b: BeamEnvelope = {
      stretches: [{ ...stretch, moment: 2, shear: 10, deflection: 4 }],
      supports: [{ at: 0, greatest: 6, least: 1, greatestLive: 3 }],
    }
    const worse = {
      stretches: [{ ...stretch, moment: 2, shear: 20, deflection: 4 }],
      supports: [{ at: 0, greatest: 6, least: -1, greatestLive: 4 }],
    }
    expect(worseEnvelope(a, b)).toEqual(worse)
    expect(worseEnvelope(b, a)).toEqual(worse)
  })
})

describe('loads on a beam', () => {
  it('are placed in the patterns that can be worst, in order', () => {
    // by influence lines: all; every second, both ways; the two beside each support with every second beyond, and the rest
    const written = (stretches: number) =>
      liveLoadPatterns(stretches).map((pattern) => pattern.map((loaded) => (loaded ? 'x' : '-')).join(''))
    expect(written(4)).toEqual(['xxxx', 'x-x-', '-x-x', 'xx-x', '--x-', '-xx-', 'x--x', 'x-xx', '-x--'])
    expect(written(2)).toEqual(['xx', 'x-', '-x', '--'])
  })
})
