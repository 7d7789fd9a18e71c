import { fail, ok, type Result } from '../../../units/index.ts'
import { suppliersOf } from '../../suppliers/offers.ts'
import type { PriceBook } from '../../types.ts'
import type { Refusal } from './types.ts'

/** The book in which a supplier has another name, wherever it stands. */
export function renamed(book: PriceBook, from: string, to: string): Result<PriceBook, Refusal> {
  if (from === to) return ok(book)
  if (suppliersOf(book).includes(to))
    return fail({ message: `there is a supplier “${to}” already`, fix: 'give another name' })
  const named = <T extends { readonly supplier?: string }>(one: T): T =>
    one.supplier === from ? { ...one, supplier: to } : one
  const withOffers = <
    O extends { readonly supplier: string },
    T extends { readonly supplier?: string; readonly offers?: readonly O[] },
  >(
    entry: T,
  ): T => {
    const own = named(entry)
    return own.offers === undefined ? own : { ...own, offers: own.offers.map(named) }
  }
  return ok({
    ...book,
    supplier: book.supplier === from ? to : book.supplier,
    suppliers: book.suppliers.map((one) => (one.name === from ? { ...one, name: to } : one)),
    lumber: book.lumber.map((product) => ({ ...product, stock: product.stock.map(withOffers) })),
    goods: book.goods.map(withOffers),
  })
}
