import { describe, expect, it } from 'vitest'
import { allowedStock, boughtByCount, unitPriceAt } from '../../../../core/cutting/audit/stock-rules.ts'
import type { StockOption } from '../../../../core/cutting/index.ts'
import type { Cents, Ticks } from '../../../../core/units/index.ts'
import { RICH_JOB } from './rich-plan.ts'

const plain: StockOption = { id: 's', length: 100 as Ticks, price: 10 as Cents, supply: null, offcut: false }
const steps = [
  { from: 2, price: 9 as Cents },
  { from: 4, price: 8 as Cents },
]

describe('a price', () => {
  it('is that of the greatest count reached, in whatever order the breaks stand', () => {
    for (const breaks of [steps, steps.toReversed()]) {
      expect([1, 2, 3, 4, 9].map((count) => unitPriceAt({ ...plain, breaks }, count))).toEqual([
        10, 9, 9, 8, 8,
      ])
    }
  })
})

describe('a stock', () => {
  it('is bought by count where it comes in packs, from a minimum or with a break', () => {
    expect(boughtByCount(plain)).toBe(false)
    expect(boughtByCount({ ...plain, pack: 1, minimum: 1, breaks: [] })).toBe(false)
    expect(boughtByCount({ ...plain, pack: 2 })).toBe(true)
    expect(boughtByCount({ ...plain, minimum: 2 })).toBe(true)
    expect(boughtByCount({ ...plain, breaks: steps })).toBe(true)
  })

  it('that its trims use up is none', () => {
    const allowed = allowedStock({ ...RICH_JOB, onlyStock: ['s'], endTrim: 50 as Ticks, stock: [plain] })
    expect([...allowed]).toEqual([])
  })
})
