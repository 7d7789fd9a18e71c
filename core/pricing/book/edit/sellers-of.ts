import { stockOffers } from '../../suppliers/offers.ts'
import type { GoodOffer, GoodPrice, PriceBook, StockOffer, StockPrice } from '../../types.ts'

/** Everyone who sells a length, in order; the first is the book's own entry. */
export function stockSellers(entry: StockPrice, book: PriceBook): readonly StockOffer[] {
  return stockOffers(entry, book).map(({ id: _id, ...offer }) => offer)
}

/** A length as those who sell it make it; null where nobody does. */
export function stockOf(
  length: StockPrice['length'],
  [first, ...offers]: readonly StockOffer[],
  book: Pick<PriceBook, 'supplier'>,
): StockPrice | null {
  if (first === undefined) return null
  const { supplier, ...own } = first
  return {
    length,
    ...own,
    ...(supplier === book.supplier ? {} : { supplier }),
    ...(offers.length === 0 ? {} : { offers }),
  }
}

/** A good as those who sell it make it; null where nobody does. */
export function goodOf(
  good: GoodPrice,
  [first, ...offers]: readonly GoodOffer[],
  book: Pick<PriceBook, 'supplier'>,
): GoodPrice | null {
  if (first === undefined) return null
  const { sku, label, unit, note } = good
  const { supplier, ...own } = first
  return {
    sku,
    label,
    unit,
    note,
    ...own,
    ...(supplier === book.supplier ? {} : { supplier }),
    ...(offers.length === 0 ? {} : { offers }),
  }
}
