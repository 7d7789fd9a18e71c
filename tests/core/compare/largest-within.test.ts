import { describe, expect, it } from 'vitest'
import { largestWithin, leastOf } from '../../../core/compare/index.ts'
import { cents } from '../../../core/units/index.ts'
import { ft, rowAt } from '../../fixtures/compare-rows.ts'

const rows = [
  rowAt(ft(12), { depth: ft(10), cost: cents(400_000), price: cents(600_000) }),
  rowAt(ft(16), { depth: ft(10), cost: cents(520_000), price: cents(780_000) }),
  rowAt(ft(20), { depth: ft(8), cost: cents(500_000), price: cents(750_000) }),
  rowAt(ft(20), { depth: ft(10), cost: cents(640_000), price: cents(960_000) }),
  rowAt(ft(24), { depth: ft(10), cost: cents(10), price: cents(10), failing: 1 }),
  rowAt(ft(30), { depth: ft(10), cost: cents(0), price: cents(0), fault: 'no board is so long' }),
]
const size = (row: { width: number; depth: number } | null) => row && [row.width / 384, row.depth / 384]

describe('the largest size within a budget', () => {
  it('is the one of the most area that it pays for; of equal areas the one that costs less', () => {
    // 16 × 10 and 20 × 8 are 160 sq ft each
    expect(size(largestWithin(rows, cents(520_000), 'cost'))).toEqual([20, 8])
    expect(size(largestWithin(rows, cents(640_000), 'cost'))).toEqual([20, 10])
  })

  it('is judged by the price where a customer pays it', () => {
    expect(size(largestWithin(rows, cents(640_000), 'price'))).toEqual([12, 10])
  })

  it('is never one that fails a check or has no price', () => {
    expect(size(largestWithin(rows, cents(100_000_000), 'cost'))).toEqual([20, 10])
  })

  it('is none where all cost more, and the least is named instead', () => {
    expect(largestWithin(rows, cents(399_999), 'cost')).toBeNull()
    expect(size(leastOf(rows, 'cost'))).toEqual([12, 10])
    expect(leastOf([], 'cost')).toBeNull()
  })
})
