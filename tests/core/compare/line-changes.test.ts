import { describe, expect, it } from 'vitest'
import { priceDifference } from '../../../core/compare/index.ts'
import { type Pricing, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { sumCents, type UnitPrice } from '../../../core/units/index.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const pricingOf = (width: string, pricing = {}, book = SAMPLE_BOOK): Pricing => {
  const made = estimateOf(
    smallJob(width, { pricing: { salesTax: '6 %', overhead: '10 %', priceTax: '3 %', ...pricing } }),
    book,
  )
  if (made.pricing === null) throw new Error('it has no price')
  return made.pricing
}
const plain = pricingOf('11 ft 10 in')
const HANGER = 'good-joist-hanger-2x8'

/** By how much the customer's price rose, by the lines and sums that are told. */
function toldRise(before: Pricing, after: Pricing): number {
  const { lines, sums } = priceDifference(before, after)
  return sumCents([...lines, ...sums].map(({ difference }) => difference))
}

describe('the difference of two prices', () => {
  it('is nothing where nothing changed', () => {
    expect(priceDifference(plain, pricingOf('11 ft 10 in'))).toEqual({ lines: [], sums: [] })
  })

  it('names lines that came, went or changed, and sums to the change of the price with tax', () => {
    const wider = pricingOf('14 ft', { margin: '40 %' })
    const { lines } = priceDifference(plain, wider)
    expect(lines.some(({ before }) => before === null)).toBe(true)
    expect(lines.some(({ after }) => after === null)).toBe(true)
    expect(lines.some(({ before, after }) => before !== null && after !== null)).toBe(true)
    const rise = wider.totals.priceWithTax - plain.totals.priceWithTax
    expect(rise).not.toBe(0)
    expect(toldRise(plain, wider)).toBe(rise)
    expect(toldRise(wider, plain)).toBe(-rise)
  })

  it('tells a price of the book line by line, with what it was', () => {
    const dearer = {
      ...SAMPLE_BOOK,
      goods: SAMPLE_BOOK.goods.map((good) =>
        good.sku === 'joist-hanger-2x8' ? { ...good, price: (good.price + 10_000) as UnitPrice } : good,
      ),
    }
    const { lines } = priceDifference(plain, pricingOf('11 ft 10 in', {}, dearer))
    expect(lines.map(({ id }) => id)).toEqual([HANGER])
    const [hanger] = lines
    expect((hanger?.after?.price ?? 0) - (hanger?.before?.price ?? 0)).toBe(10_000)
    // one dollar more for each
    expect(hanger?.difference).toBe((hanger?.after?.thousandths ?? 0) / 10)
  })

  it('tells a line stated by hand even where it comes to the same money', () => {
    const line = plain.lines.find(({ id }) => id === HANGER)
    if (line === undefined) throw new Error('there are hangers')
    const half = pricingOf('11 ft 10 in', {
      lines: `${HANGER}: ${line.thousandths / 2000} at $${(line.price * 2) / 10_000}`,
    })
    expect(priceDifference(plain, half)).toMatchObject({ lines: [{ id: HANGER, difference: 0 }], sums: [] })
  })
})
