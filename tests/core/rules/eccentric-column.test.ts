import { describe, expect, it } from 'vitest'
import { eccentricCapacity, eccentricShare } from '../../../core/rules/eccentric-column.ts'

/** Round figures: FcE = 0.822 × 100,000 ÷ 20² = 205.5 psi (NDS 2018 3.7.1, 15.4.1). */
const slender = { compression: 1000, bending: 500, leastModulus: 100_000, slenderness: 20, off: 1 / 3 }

describe('a column under a load beside its middle', () => {
  it('bears the square of its share in compression, and its bending grown by the load', () => {
    // fc 102.75, half of FcE: (102.75 ÷ 1,000)² = 0.010558; 102.75 × 2 × (1 + 0.234 ÷ 2) ÷ (500 × 0.5) = 0.918174
    expect(eccentricShare(102.75, slender)).toBeCloseTo(0.010558 + 0.918174, 5)
    // a quarter of FcE: 0.002639; 51.375 × 2 × 1.0585 ÷ (500 × 0.75) = 0.290029
    expect(eccentricShare(51.375, slender)).toBeCloseTo(0.002639 + 0.290029, 5)
  })

  it('bears no load that buckles it, however strong it is', () => {
    expect(eccentricShare(205.4, slender)).toBeGreaterThan(100)
    expect(eccentricShare(205.5, slender)).toBe(Number.POSITIVE_INFINITY)
    expect(eccentricShare(300, slender)).toBe(Number.POSITIVE_INFINITY)
  })

  it('does not buckle where it has no height', () => {
    // (400 ÷ 1,000)² + 400 × 2 ÷ 500
    expect(eccentricShare(400, { ...slender, slenderness: 0 })).toBeCloseTo(0.16 + 1.6, 9)
    expect(eccentricShare(400, { ...slender, slenderness: -1 })).toBeCloseTo(0.16 + 1.6, 9)
  })

  it('may have the stress at which that comes to one', () => {
    const short = { ...slender, slenderness: 0 }
    // fc² ÷ 10⁶ + fc ÷ 250 − 1 = 0: fc = 10⁶ × (−0.004 + √(0.000016 + 0.000004)) ÷ 2 = 236.068
    expect(eccentricCapacity(short)).toBeCloseTo(236.068, 3)
    expect(eccentricShare(eccentricCapacity(slender), slender)).toBeCloseTo(1, 9)
  })

  it('has the whole of its compression where the load stands on its middle', () => {
    expect(eccentricCapacity({ ...slender, slenderness: 0, off: 0 })).toBeCloseTo(1000, 9)
  })
})
