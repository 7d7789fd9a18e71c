import type { PriceBook } from '../types.ts'
import { bookFrom } from './book-from.ts'
import { hasSeveralSuppliers } from './offers.ts'

/** From whom an order is bought: of these suppliers, and some things of one of them only. */
export interface BoughtFrom {
  readonly suppliers: readonly string[]
  readonly only: readonly { readonly thing: string; readonly supplier: string }[]
}

/** The prices at which an order was bought; the book itself where one supplier brings everything. */
export function bookAsBought(book: PriceBook, from: BoughtFrom | null): PriceBook {
  if (from === null) return book
  const suppliers = new Set(from.suppliers)
  const only = new Map(from.only.map(({ thing, supplier }) => [thing, supplier]))
  return bookFrom(book, (name, thing) => suppliers.has(name) && (only.get(thing) ?? name) === name)
}

/**
 * Each thing at the least price of any supplier, and no deliveries: what anything costs at least. For weighing sizes and
 * cutting lists of pieces, for which nobody says how much else is ordered. The book itself where that is all it says.
 */
export function leastPrices(book: PriceBook): PriceBook {
  if (book.suppliers.length === 0 && !hasSeveralSuppliers(book)) return book
  return { ...bookFrom(book, () => true), suppliers: [] }
}
