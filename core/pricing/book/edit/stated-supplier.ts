import type { PriceBook } from '../../types.ts'

/** The book in which a supplier is stated, and so the book's own: what its delivery costs is not known yet. */
export function withSupplier(book: PriceBook, name: string): PriceBook {
  const missing = [book.supplier, name].filter(
    (one, at, all) => all.indexOf(one) === at && !book.suppliers.some((stated) => stated.name === one),
  )
  return {
    ...book,
    suppliers: [...book.suppliers, ...missing.map((one) => ({ name: one, delivery: null, freeFrom: null }))],
  }
}
