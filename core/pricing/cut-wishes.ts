import type { Objective } from '../cutting/index.ts'
import type { ProductClass } from '../frame/index.ts'
import { type Job, stockCounts, stockLengths } from '../job/index.ts'
import { productName } from './product-name.ts'
import { type NamedOffer, stockOffers } from './suppliers/offers.ts'
import type { LumberProduct, PriceBook, PriceFault, StockPrice } from './types.ts'

/** A length at one supplier, in the supply that is left of it. */
export type WishedStock = NamedOffer & Pick<StockPrice, 'length'>

/**
 * The stock lengths that the job's wishes leave of a product, each in no larger supply than they allow; a length that is
 * limited and has several suppliers is taken from the cheapest as far as their supply goes.
 */
export function wishedStock(
  listed: LumberProduct,
  { cutting }: Job,
  book: Pick<PriceBook, 'supplier'>,
): readonly WishedStock[] {
  const { size } = listed.product
  const without = stockLengths(cutting.doWithout).filter((wish) => wish.size === size)
  const most = new Map(
    stockCounts(cutting.atMost)
      .filter((wish) => wish.size === size)
      .map((wish) => [wish.length, wish.count]),
  )
  return listed.stock
    .filter((stock) => !without.some((wish) => wish.length === stock.length))
    .flatMap((stock) => {
      const offers = stockOffers(stock, book).map((offer) => ({ ...offer, length: stock.length }))
      const count = most.get(stock.length)
      return count === undefined ? offers : atMost(count, offers)
    })
}

function atMost(count: number, offers: readonly WishedStock[]): readonly WishedStock[] {
  let left = count
  return offers
    .toSorted((a, b) => a.price - b.price)
    .flatMap((offer, place) => {
      const supply = Math.min(left, offer.supply ?? left)
      left -= supply
      return supply === 0 && place > 0 ? [] : [{ ...offer, supply }]
    })
}

/** What the plans are chosen for; least cost decides in the end whatever stands before it. */
export function objectivesOf({ cutting }: Job): readonly Objective[] {
  const { objective, objectiveThen } = cutting
  return objective === objectiveThen || (objective !== 'least cost' && objectiveThen === 'least cost')
    ? [objective]
    : [objective, objectiveThen]
}

export function allLeftOut(product: ProductClass, listed: LumberProduct): PriceFault {
  const name = productName(product)
  return {
    subject: name,
    message: `Every stock length of ${name} is among those to do without (${listed.stock.length} of ${listed.stock.length}).`,
    fix: 'Take one of them back under "Lengths to do without".',
  }
}
