import { describe, expect, it } from 'vitest'
import {
  beamStability,
  bearingAreaFactor,
  calculatedLedgerSpacing,
  cantileverByTip,
  columnStability,
  criticalBuckling,
  deflectionSpan,
  dowelBearing,
  figure,
  footingDiameter,
  footingSide,
  footingThickness,
  guideBeamSpan,
  guideFootingDiameter,
  guideFootingThickness,
  guideOverhang,
  guidePostHeight,
  heldUpright,
  impliedFastenerLoad,
  joistSpanFactor,
  layOutFlight,
  ledgerSpacing,
  liveLoadPatterns,
  notchFaults,
  rectangleOf,
  sizeFactors,
  slendernessFor,
  soilPressure,
  stringerLine,
  tabledBeamSpan,
  tabledCantilever,
  tabledFootingDiameter,
  tabledFootingThickness,
  tabledJoistSpan,
  tabledPostHeight,
  wetDimension,
} from '../../../core/rules/index.ts'
import { wetTimber } from '../../../core/rules/wet-service.ts'
import { feet, inches, psf } from '../../../core/units/index.ts'

/** Each rule at its edges: what it says at the limit, just under it and just over it. */
describe('figures in print', () => {
  it('group thousands and drop zeros at the end, and no others', () => {
    expect([figure(1234567), figure(999), figure(1000), figure(0)]).toEqual([
      '1,234,567',
      '999',
      '1,000',
      '0',
    ])
    expect([figure(1.5, 3), figure(1.25, 1), figure(10, 2), figure(1050.1, 1), figure(0.05, 2)]).toEqual([
      '1.5',
      '1.3',
      '10',
      '1,050.1',
      '0.05',
    ])
  })
})

describe('members at their limits', () => {
  it('need no hold to 2 in depth to breadth, their ends to 4, an edge to 6, both edges beyond (NDS 2018 4.4.1.2)', () => {
    const [none, ends, edge, all] = [
      { ends: false, edge: false, bothEdges: false },
      { ends: true, edge: false, bothEdges: false },
      { ends: true, edge: true, bothEdges: false },
      { ends: true, edge: true, bothEdges: true },
    ]
    expect([2, 2.01].map((ratio) => heldUpright(ratio, none))).toEqual([true, false])
    expect([4, 4.01].map((ratio) => heldUpright(ratio, ends))).toEqual([true, false])
    expect([6, 6.01].map((ratio) => heldUpright(ratio, edge))).toEqual([true, false])
    expect(heldUpright(8, all)).toBe(true)
    expect(heldUpright(5, { ends: false, edge: true, bothEdges: true })).toBe(false)
    expect(heldUpright(8, { ends: false, edge: true, bothEdges: true })).toBe(false)
  })

  it('are stable at no slenderness, allowed at 50, not beyond (NDS 2018 3.3.3.7, 3.7.1.4)', () => {
    expect([beamStability(0, 5e5, 1000), beamStability(-1, 5e5, 1000)]).toEqual([1, 1])
    expect(beamStability(50, 5e5, 1000)).toBeGreaterThan(0)
    expect(beamStability(50.01, 5e5, 1000)).toBe(0)
    expect([columnStability(0, 5e5, 1000), columnStability(0, 5e5, 1000, 0.6)]).toEqual([1, 0.6])
    expect(columnStability(50, 5e5, 1000)).toBeGreaterThan(0)
    expect(columnStability(50.01, 5e5, 1000)).toBe(0)
    // FcE = 0.822 Emin / (le/d)²
    expect(criticalBuckling(20, 400_000)).toBe(822)
  })

  it('find the slenderness of a stability and back, from none to all of it', () => {
    for (const stability of [0.1, 0.4, 0.73, 0.95]) {
      const slenderness = slendernessFor(stability, 5e5, 1000)
      expect(columnStability(Math.min(50, slenderness), 5e5, 1000)).toBeCloseTo(
        slenderness > 50 ? columnStability(50, 5e5, 1000) : stability,
        9,
      )
    }
    expect([slendernessFor(0, 5e5, 1000), slendernessFor(-1, 5e5, 1000)]).toEqual([
      Number.POSITIVE_INFINITY,
      Number.POSITIVE_INFINITY,
    ])
    expect([slendernessFor(1, 5e5, 1000), slendernessFor(2, 5e5, 1000)]).toEqual([0, 0])
  })

  it('gain by bearing only under 6 in, 3 in and more from the end (NDS 2018 3.10.4)', () => {
    expect([bearingAreaFactor(5.99, 3), bearingAreaFactor(6, 3), bearingAreaFactor(4, 2.99)]).toEqual([
      6.365 / 5.99,
      1,
      1,
    ])
    expect(bearingAreaFactor(3, 3)).toBe(1.125)
  })

  it('deflect a 360th at the span that says so: 5 w L⁴ / 384 E I by hand', () => {
    const section = rectangleOf('2x8')
    const span = deflectionSpan(4, section, 1.26e6, 360)
    const inertia = (1.5 * 7.25 ** 3) / 12
    expect((5 * 4 * span ** 4) / (384 * 1.26e6 * inertia)).toBeCloseTo(span / 360, 9)
    const reach = cantileverByTip(220, 120, 1.26e6 * inertia, 180)
    expect((220 * reach ** 2 * (120 + reach)) / (3 * 1.26e6 * inertia)).toBeCloseTo(reach / 180, 9)
  })

  it('lose by water only above 1,150 psi in bending and 750 psi in compression (NDS Supplement 2018 Table 4A)', () => {
    expect([wetDimension(true, 1150, 750).bending, wetDimension(true, 1150.1, 750).bending]).toEqual([
      1, 0.85,
    ])
    expect([wetDimension(true, 0, 750).compression, wetDimension(true, 0, 750.1).compression]).toEqual([
      1, 0.8,
    ])
    expect(wetDimension(true, 0, 0)).toMatchObject({ shear: 0.97, compressionAcross: 0.67, modulus: 0.9 })
    expect(wetDimension(false, 2000, 2000)).toEqual({
      bending: 1,
      tension: 1,
      shear: 1,
      compressionAcross: 1,
      compression: 1,
      modulus: 1,
    })
    expect(wetTimber(false)).toEqual(wetDimension(false, 0, 0))
    expect(wetTimber(true)).toMatchObject({
      bending: 1,
      compression: 0.91,
      compressionAcross: 0.67,
      modulus: 1,
    })
  })

  it('gain by size as Table 4A says, and Southern Pine only 4 in thick and 8 in deep (Table 4B)', () => {
    expect(sizeFactors(false, 2, 6)).toEqual({ bending: 1.3, compression: 1.1, tension: 1.3 })
    expect(sizeFactors(false, 2, 12)).toEqual({ bending: 1, compression: 1, tension: 1 })
    expect(sizeFactors(false, 4, 8).bending).toBe(1.3)
    expect(sizeFactors(false, 4, 10).bending).toBe(1.2)
    expect(
      [sizeFactors(true, 4, 8), sizeFactors(true, 4, 6), sizeFactors(true, 2, 8)].map((one) => one.bending),
    ).toEqual([1.1, 1, 1])
    expect(sizeFactors(true, 4, 8)).toMatchObject({ compression: 1, tension: 1 })
  })
})

describe('joist span factor', () => {
  it('is the table at its rows and between them, and statics where that is more', () => {
    // rows of Table R507.5(5): C/J 0, 1/12, 1/10, 1/8, 1/6, 1/4
    expect([0, 1 / 8, 1 / 6, 1 / 4].map((share) => Number(joistSpanFactor(share).toFixed(2)))).toEqual([
      0.66, 0.84, 0.9, 1,
    ])
    for (const share of [0.02, 0.05, 0.11, 0.2])
      expect(joistSpanFactor(share)).toBeGreaterThanOrEqual((1 + share) ** 2 / 2 / 0.78125)
  })
})

describe('notches', () => {
  it('at the end may be a quarter deep and of any length; elsewhere faults of depth and length add up', () => {
    const depth = inches(12)
    expect(notchFaults({ depth: inches(3), length: inches(11), at: 'end' }, depth)).toEqual([])
    expect(notchFaults({ depth: inches(3.5), length: inches(1), at: 'end' }, depth)).toEqual([
      "the notch may be a quarter of the joist's depth at most",
    ])
    expect(notchFaults({ depth: inches(3), length: inches(5), at: 'outer third' }, depth)).toEqual([
      "the notch may be a sixth of the joist's depth at most",
      "the notch may be a third of the joist's depth long at most",
    ])
    expect(notchFaults({ depth: inches(1), length: inches(1), at: 'middle third' }, depth)).toEqual([
      'a notch in the middle third of the span is not allowed',
    ])
  })
})

describe('footings', () => {
  it('carry their load on soil: side, diameter and pressure of one area', () => {
    expect(footingSide(1500, 1500)).toBe(12)
    expect(footingDiameter(1500, 1500)).toBeCloseTo(12 * Math.sqrt(4 / Math.PI), 12)
    expect(soilPressure(1500, footingDiameter(1500, 1500))).toBeCloseTo(1500, 9)
    expect([footingThickness(17.5, 5.5), footingThickness(18.5, 5.5), footingThickness(10, 5.5)]).toEqual([
      6, 6.5, 6,
    ])
  })
})

describe('ledger fasteners', () => {
  it('carry the least load that the 60 psf page implies', () => {
    expect(impliedFastenerLoad('lag', 'up to 1/2 in')).toBe(367.5)
    expect(impliedFastenerLoad('bolt', 'up to 1/2 in')).toBe(682.5)
    expect(impliedFastenerLoad('bolt', 'up to 1 in')).toBe(577.5)
    expect(impliedFastenerLoad('lag', 'up to 1 in')).toBeNull()
  })

  it('stand whole inches apart, rounded down, 36 in at most', () => {
    expect([calculatedLedgerSpacing(24.5, 367.5), calculatedLedgerSpacing(24.6, 367.5)]).toEqual([15, 14])
    expect(calculatedLedgerSpacing(1, 367.5)).toBe(36)
  })
})

describe('stairs', () => {
  it('take the fewest risers within 7-3/4 in', () => {
    expect(layOutFlight(inches(38.75), inches(10))).toEqual({
      risers: 5,
      treads: 4,
      riser: inches(7.75),
      run: inches(40),
    })
    expect(layOutFlight(inches(38.78125), inches(10)).risers).toBe(6)
    expect(stringerLine(inches(3), inches(4))).toBe(inches(5))
  })
})

describe('patterns of the live load', () => {
  it('are all spans, every second one either way, and pairs beside a support', () => {
    const text = (stretches: number) =>
      liveLoadPatterns(stretches)
        .map((one) => one.map(Number).join(''))
        .sort()
    expect(text(1)).toEqual(['0', '1'])
    expect(text(2)).toEqual(['00', '01', '10', '11'])
    expect(text(3)).toEqual(['001', '010', '011', '100', '101', '110', '111'].sort())
    for (const four of ['1111', '1010', '0101', '1101', '0010', '0110', '1001', '1011', '0100'])
      expect(text(4)).toContain(four)
  })
})

describe('look-ups name their table, page, row and column', () => {
  const value = (found: ReturnType<typeof tabledJoistSpan>) =>
    found.kind === 'row' ? found.value : found.kind

  it('of the code', () => {
    // IRC 2021 Tables R507.6, R507.5(1), R507.4, R507.3.1, R507.9.1.3(1) at 40 psf, as the data pack has them
    expect(value(tabledJoistSpan('2x10', inches(16), 'SP', 40))).toBe(168)
    expect(value(tabledJoistSpan('2x10', inches(16), 'DFL', 40))).toBe(163)
    expect(value(tabledCantilever('2x10', feet(12), 'SP', 40))).toBe(36)
    expect(value(tabledBeamSpan('2x12', 2, feet(12), 'SP', 40))).toBe(103)
    expect(value(tabledPostHeight('4x6', 60, 'SP', 40))).toBe(167)
    expect(value(tabledFootingDiameter(60, psf(1500), psf(40)))).toBe(19)
    expect(value(tabledFootingThickness(60, psf(1500), psf(40)))).toBe(6)
    expect(value(ledgerSpacing(feet(12), 'lag', 'up to 1/2 in', psf(40)))).toBe(15)
    expect(value(ledgerSpacing(feet(12), 'bolt', 'up to 1 in', psf(40)))).toBe(24)
    expect(value(ledgerSpacing(feet(12), 'lag', 'up to 1 in', psf(40)))).toBe('outside')
  })

  it('of the deck guide, each species in its column', () => {
    expect(value(guideOverhang('2x10', inches(16), 'SP'))).toBe(41)
    expect(value(guideOverhang('2x10', inches(16), 'WC'))).toBe(31)
    expect(
      (['SP', 'DFL', 'HF', 'WC', 'RW', 'SPF'] as const).map((one) =>
        value(guidePostHeight(feet(12), feet(14), one)),
      ),
    ).toEqual([156, 144, 108, 108, 132, 60])
    expect(value(guideFootingDiameter(feet(8), feet(14), psf(1500)))).toBe(24)
    expect(value(guideFootingThickness(feet(8), feet(14), psf(1500)))).toBe(10)
    expect(value(guideBeamSpan('2x12', 2, feet(12), 'SP'))).toBe(100)
    expect((['DFL', 'WC'] as const).map((one) => value(guideBeamSpan('2x12', 2, feet(12), one)))).toEqual([
      79, 79,
    ])
  })
})

describe('dowels', () => {
  it('bear along and across the grain to the nearest 50 psi (NDS 2018 Table 12.3.3)', () => {
    expect([dowelBearing(0.55, 0.5, 'along'), dowelBearing(0.5, 0.5, 'along')]).toEqual([6150, 5600])
    expect([dowelBearing(0.55, 0.5, 'across'), dowelBearing(0.5, 0.5, 'across')]).toEqual([3650, 3150])
  })
})
