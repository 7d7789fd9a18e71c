import { describe, expect, it } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { skus, taskRates } from '../../../core/takeoff/index.ts'
import { toFeet } from '../../../core/units/index.ts'

const lengthsOf = (size: string) =>
  SAMPLE_BOOK.lumber.find((entry) => entry.product.size === size)?.stock.map((stock) => toFeet(stock.length))

describe('the sample price book', () => {
  it('says that it is invented, and is dated', () => {
    expect(SAMPLE_BOOK.invented).toBe(true)
    expect(SAMPLE_BOOK.name).toContain('invented')
    expect(SAMPLE_BOOK.date).toMatch(/^\d{4}-\d{2}-\d{2}$/)
  })

  it.each(skus)('prices $sku by the $unit, as the takeoff counts it', ({ sku, unit }) => {
    const good = SAMPLE_BOOK.goods.find((one) => one.sku === sku)
    expect(good?.unit).toBe(unit)
    expect(good?.price).toBeGreaterThan(0)
    expect(good?.pack).toBeGreaterThan(0)
  })

  it.each(taskRates)('has hours for $rateId by the $unit, as the takeoff counts it', ({ rateId, unit }) => {
    const rate = SAMPLE_BOOK.rates.find((one) => one.id === rateId)
    expect(rate?.unit).toBe(unit)
    expect(rate?.crewHours).toBeGreaterThan(0)
    expect(['verified', 'common practice, no source']).toContain(rate?.confidence)
  })

  // the project's own decision on what an invented yard has
  it('has the stock lengths that a yard of its kind is taken to have', () => {
    for (const size of ['2x4', '2x6', '2x8']) expect(lengthsOf(size)).toEqual([8, 10, 12, 14, 16, 18, 20])
    for (const size of ['2x10', '2x12'])
      expect(lengthsOf(size)).toEqual([6, 8, 10, 12, 14, 16, 18, 20, 22, 24])
    expect(lengthsOf('5/4x6')).toEqual([12, 16, 20])
  })

  it('names every kind of joint with its material and minutes', () => {
    expect(SAMPLE_BOOK.joints.map((joint) => joint.kind)).toEqual(['beam ply', 'rim', 'ledger', 'decking'])
  })

  it('asks for no blocks in a joint of a rim, for boards are priced by themselves', () => {
    // six 16d nails of 45 to the pound, 8 % fewer when galvanised (nails.ts), at the book’s own $4.25 a pound, in hundredths of a cent
    const nails = SAMPLE_BOOK.goods.find(({ sku }) => sku === 'nail-16d-common')?.price ?? 0
    const rim = SAMPLE_BOOK.joints.find(({ kind }) => kind === 'rim')
    expect(rim?.material).toBe(Math.round(((6 / (45 * 0.92)) * nails) / 100))
    expect(rim?.label).not.toMatch(/block/i)
  })

  it('charges no price per foot that falls where nothing longer is dearer, but lists need not be even', () => {
    for (const { stock } of SAMPLE_BOOK.lumber) {
      const prices = stock.map((one) => one.price)
      expect(prices).toEqual([...prices].sort((a, b) => a - b))
    }
  })
})
