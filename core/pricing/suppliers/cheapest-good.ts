import { type Cents, priceOf } from '../../units/index.ts'
import type { GoodOffer, GoodPrice, PriceBook } from '../types.ts'
import { goodOffers } from './offers.ts'

/** A good as it is bought: whole packs at one supplier. */
export interface BoughtGood extends GoodOffer {
  /** in 1/1000 unit, rounded up to whole packs */
  readonly thousandths: number
  readonly amount: Cents
}

/** The supplier at whom a quantity of a good costs least, packs counted; of two alike the earlier one. */
export function cheapestGood(good: GoodPrice, needed: number, book: Pick<PriceBook, 'supplier'>): BoughtGood {
  const [first, ...others] = goodOffers(good, book).map((offer): BoughtGood => {
    const thousandths = Math.ceil(needed / offer.pack) * offer.pack
    return { ...offer, thousandths, amount: priceOf(thousandths, offer.price) }
  })
  if (first === undefined) throw new Error(`${good.sku} has no price`)
  return others.reduce((least, one) => (one.amount < least.amount ? one : least), first)
}
