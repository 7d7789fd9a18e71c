import type { GoodPrice, PriceBook, StockPrice } from '../types.ts'
import { goodOffers, isFromYard, type NamedOffer, stockOffers } from './offers.ts'

/**
 * The book as it is where one buys from some suppliers only: each length at its least price among them, with dearer
 * offers beside it only where terms, such as a supply, could make them the better ones; each good with all their offers,
 * as packs decide which is cheapest for a quantity. What none of them sells is not in it.
 * @param buys whether a thing, by its key, may be bought from a supplier
 */
export function bookFrom(book: PriceBook, buys: (supplier: string, thing: string) => boolean): PriceBook {
  return {
    ...book,
    lumber: book.lumber.map(({ stock, ...product }) => ({
      ...product,
      stock: stock.flatMap((entry) => stockFrom(entry, book, buys)),
    })),
    goods: book.goods.flatMap((good) => goodFrom(good, book, buys)),
  }
}

/** What a length and a good are called where one says from whom each is bought. */
export const stockThing = (code: string): string => `stock ${code}`
export const goodThing = (sku: string): string => `good ${sku}`

function stockFrom(
  entry: StockPrice,
  book: PriceBook,
  buys: (supplier: string, thing: string) => boolean,
): readonly StockPrice[] {
  const thing = stockThing(entry.code)
  const asked = stockOffers(entry, book).filter(({ supplier }) => buys(supplier, thing))
  const [first, ...others] = asked
    .filter(
      (offer, place) => !asked.some((other, at) => other !== offer && isNoDearer(other, offer, at < place)),
    )
    .toSorted((a, b) => a.price - b.price)
  if (first === undefined) return []
  return [
    {
      ...first,
      length: entry.length,
      ...(others.length === 0 ? {} : { offers: others }),
    },
  ]
}

/** Of two that come to the same the earlier one counts. */
function isNoDearer(one: NamedOffer, other: NamedOffer, earlier: boolean): boolean {
  const free = one.supply === undefined && (one.pack ?? 1) <= 1 && (one.minimum ?? 1) <= 1
  const least = Math.min(other.price, ...(other.breaks ?? []).map(({ price }) => price))
  return free && (one.price < least || (one.price === least && (earlier || hasTerms(other))))
}

function hasTerms({ supply, pack, minimum, breaks }: NamedOffer): boolean {
  return supply !== undefined || (pack ?? 1) > 1 || (minimum ?? 1) > 1 || (breaks ?? []).length > 0
}

function goodFrom(
  good: GoodPrice,
  book: PriceBook,
  buys: (supplier: string, thing: string) => boolean,
): readonly GoodPrice[] {
  if (!isFromYard(good.sku)) return [good]
  const [first, ...others] = goodOffers(good, book).filter(({ supplier }) =>
    buys(supplier, goodThing(good.sku)),
  )
  if (first === undefined) return []
  const { offers: _offers, date: _date, supplier: _supplier, ...kept } = good
  return [{ ...kept, ...first, ...(others.length === 0 ? {} : { offers: others }) }]
}
