import type { GoodOffer, GoodPrice, PriceBook, StockOffer, StockPrice } from '../types.ts'

/** A length at one supplier, with the name by which plans and lines call it. */
export type NamedOffer = StockOffer & { readonly id: string }

/** What a length costs at each supplier, the book's own first. */
export function stockOffers(
  { length: _length, offers = [], supplier, ...own }: StockPrice,
  book: Pick<PriceBook, 'supplier'>,
): readonly NamedOffer[] {
  return [
    { ...own, id: own.id ?? own.code, supplier: supplier ?? book.supplier },
    ...offers.map((offer) => ({ ...offer, id: offer.id ?? offerId(offer) })),
  ]
}

/** The code alone may be another length's at another supplier. */
export function offerId({ code, supplier }: Pick<StockOffer, 'code' | 'supplier'>): string {
  return `${code} @ ${supplier}`
}

/** What a good costs at each supplier, the book's own first. */
export function goodOffers(
  { offers = [], supplier, price, pack, code, date }: GoodPrice,
  book: Pick<PriceBook, 'supplier'>,
): readonly GoodOffer[] {
  const own = {
    supplier: supplier ?? book.supplier,
    price,
    pack,
    code,
    ...(date === undefined ? {} : { date }),
  }
  return [own, ...offers]
}

/** Hire, fees and ready-mix have one price each: they are not loaded on a yard's truck. */
export function isFromYard(sku: string): boolean {
  return (
    !sku.startsWith('hire-') &&
    !['disposal-ton', 'delivery-trip', 'concrete-ready-mix', 'ready-mix-short-load'].includes(sku)
  )
}

/** Everyone who sells anything of the book, the book's own supplier first, then in the order in which they are stated. */
export function suppliersOf(book: PriceBook): readonly string[] {
  const names = new Set([book.supplier, ...book.suppliers.map(({ name }) => name)])
  for (const { stock } of book.lumber)
    for (const entry of stock) for (const { supplier } of stockOffers(entry, book)) names.add(supplier)
  for (const good of book.goods) for (const { supplier } of goodOffers(good, book)) names.add(supplier)
  return [...names]
}

/** Whether an order can go to more than one: several are stated, or something is sold by several. */
export function hasSeveralSuppliers(book: PriceBook): boolean {
  if (book.suppliers.length > 1) return true
  const some = ({ offers }: StockPrice | GoodPrice) => offers !== undefined && offers.length > 0
  return book.lumber.some(({ stock }) => stock.some(some)) || book.goods.some(some)
}
