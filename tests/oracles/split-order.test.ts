import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { costAt } from '../../core/cost-design.ts'
import { designJob } from '../../core/design.ts'
import { readJob } from '../../core/job/index.ts'
import { isDeliveryLine, type PriceBook } from '../../core/pricing/index.ts'
import { costDesign } from '../../core/split-order.ts'
import { engine } from '../fixtures/engine.ts'
import { type Asked, bookOfSeveral, YARD } from '../fixtures/two-suppliers.ts'
import { smallJob } from '../fixtures/worked-job.ts'

const read = readJob(smallJob('7 ft', { pricing: { salesTax: '6 %' } }))
if (!read.ok) throw new Error(JSON.stringify(read.error))
const made = designJob(read.value.job, read.value.given)
if (!made.ok) throw new Error(JSON.stringify(made.error))
const design = made.value

/** Things of the order that others sell too, with what the yard asks, in cents. */
const THINGS = [
  ['goods', 'post-base-6x6', 3275],
  ['goods', 'post-cap-6x6', 2395],
  ['goods', 'concrete-bag-80lb', 642],
  ['boards', '30546-16', 2096],
  ['boards', '30208-8', 832],
] as const
const OTHERS = ['Hill Top Lumber', 'City Lumber']

const arbitraryBook = fc
  .record({
    fees: fc.tuple(...[YARD, ...OTHERS].map(() => fc.integer({ min: 0, max: 20_000 }))),
    // per thing and other supplier: percent of the yard's price, or not sold
    shares: fc.array(fc.option(fc.integer({ min: 60, max: 130 })), { minLength: 10, maxLength: 10 }),
  })
  .map(({ fees, shares }) => {
    const asked = OTHERS.map((supplier, s): Asked => {
      const of = (kind: string) =>
        Object.fromEntries(
          THINGS.flatMap(([sold, key, price], t) => {
            const share = shares[s * THINGS.length + t] ?? null
            return sold === kind && share !== null ? [[key, Math.round((price * share) / 100)]] : []
          }),
        )
      return { supplier, goods: of('goods'), boards: of('boards') }
    })
    return bookOfSeveral(
      Object.fromEntries([YARD, ...OTHERS].map((name, at) => [name, [fees[at] ?? 0]])),
      asked,
    )
  })

const known = new Map()

/** The least of all ways to buy each thing from one of those who sell it: every product of choices, each priced whole. */
function bruteCost(book: PriceBook): number {
  let least = Number.POSITIVE_INFINITY
  for (const single of singleBooks(book)) {
    const { pricing } = costAt(design, single, engine, { known })
    if (pricing !== null) least = Math.min(least, pricing.totals.direct)
  }
  return least
}

/** Every book in which each thing has one supplier. */
function* singleBooks(book: PriceBook): Iterable<PriceBook> {
  const entries = [...book.goods, ...book.lumber.flatMap(({ stock }) => stock)].filter(
    ({ offers }) => offers !== undefined,
  )
  const counts = entries.map(({ offers }) => (offers?.length ?? 0) + 1)
  const all = counts.reduce((product, count) => product * count, 1)
  for (let code = 0; code < all; code += 1) {
    let rest = code
    const chosen = new Map<object, number>()
    entries.forEach((entry, at) => {
      chosen.set(entry, rest % (counts[at] ?? 1))
      rest = Math.floor(rest / (counts[at] ?? 1))
    })
    const one = <T extends { readonly offers?: readonly object[] }>(entry: T): T => {
      const { offers, ...own } = entry
      const offer = offers?.[(chosen.get(entry) ?? 0) - 1]
      return { ...own, ...offer } as T
    }
    yield {
      ...book,
      goods: book.goods.map(one),
      // of a board at another supplier under the same code only the supplier says whose it is
      lumber: book.lumber.map((product) => ({ ...product, stock: product.stock.map(one) })),
    }
  }
}

describe('an order between three suppliers', () => {
  test('comes to no more than the cheapest of all ways to say from whom each thing is bought', () => {
    let split = 0
    fc.assert(
      fc.property(arbitraryBook, (book) => {
        const found = costDesign(design, book, engine, { known })
        expect(found.split?.proven).toBe(true)
        expect(found.pricing?.totals.direct).toBe(bruteCost(book))
        const deliveries = found.pricing?.lines.filter(isDeliveryLine) ?? []
        expect(deliveries.length).toBe(found.split?.orders.length)
        if (deliveries.length > 1) split += 1
      }),
      { numRuns: 40 },
    )
    // both kinds come up, else nothing was tried
    expect(split).toBeGreaterThan(3)
    expect(split).toBeLessThan(40)
  })
})
