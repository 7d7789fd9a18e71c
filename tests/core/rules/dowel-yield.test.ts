import { describe, expect, it } from 'vitest'
import { type DowelMember, singleShearYield } from '../../../core/rules/index.ts'

const stiff = { length: 5, strength: 5000 }
const thin = { length: 0.5, strength: 5000 }

describe('modes in which a dowel yields, by hand from NDS 2018 Table 12.3.1A', () => {
  it('is Im or Is where a thin member is crushed: D l Fe ÷ 4 Kθ', () => {
    // 1 × 0.5 × 5000 ÷ 4 = 625 lb; across the grain Kθ is 1.25
    expect(singleShearYield(thin, stiff, 1, 45_000, 0)).toEqual({ value: 625, mode: 'Im' })
    expect(singleShearYield(stiff, thin, 1, 45_000, 0)).toEqual({ value: 625, mode: 'Is' })
    expect(singleShearYield(thin, stiff, 1, 45_000, 90)).toEqual({ value: 500, mode: 'Im' })
    expect(singleShearYield(stiff, thin, 1, 45_000, 90)).toEqual({ value: 500, mode: 'Is' })
  })

  // NDS 2018 Table 12A, 1/2 in bolts, from memory: 3-1/2 in on 3-1/2 in of gravity 0.55, 750 lb along both grains
  it('is IV where both members are thick and the dowel bends in both: D² ÷ 3.2 Kθ × √(2 Fe Fyb ÷ 3 (1 + Re))', () => {
    const member = { length: 3.5, strength: 6150 }
    const along = singleShearYield(member, member, 0.5, 45_000, 0)
    // 0.25 ÷ 3.2 × √(2 × 6150 × 45000 ÷ 6) = 750.37
    expect(along.value).toBeCloseTo(750.37, 1)
    expect(along.mode).toBe('IV')
    expect(singleShearYield(member, member, 0.5, 45_000, 90).value).toBeCloseTo(750.37 / 1.25, 1)
  })

  it('is IIIm where the dowel bends in the side member, the mirror of IIIs', () => {
    // NDS 2018 Table 12A: side 1-1/2 in, main 3-1/2 in of gravity 0.55: 660 lb along, 400 with the side across its grain
    const found = singleShearYield(
      { length: 1.5, strength: 6150 },
      { length: 3.5, strength: 6150 },
      0.5,
      45_000,
      0,
    )
    expect(found.mode).toBe('IIIm')
    expect(Math.abs(found.value - 660)).toBeLessThanOrEqual(5.1)
    const across = singleShearYield(
      { length: 1.5, strength: 3650 },
      { length: 3.5, strength: 6150 },
      0.5,
      45_000,
      90,
    )
    expect(across.mode).toBe('IIIm')
    expect(Math.abs(across.value - 400)).toBeLessThanOrEqual(5.1)
  })

  it('carries the same whichever member is called the main one', () => {
    const members: readonly DowelMember[] = [
      { length: 1.5, strength: 6150 },
      { length: 3.5, strength: 3650 },
      { length: 0.75, strength: 2550 },
      stiff,
      thin,
    ]
    for (const a of members)
      for (const b of members)
        for (const angle of [0, 90]) {
          const there = singleShearYield(a, b, 0.5, 45_000, angle).value
          expect(singleShearYield(b, a, 0.5, 45_000, angle).value).toBeCloseTo(there, 6)
        }
  })
})
