import { bookAge, OLD_AFTER_DAYS } from './book-age.ts'
import type { PriceBook, PriceSource } from './types.ts'

/** Prices that are old enough to be asked for again. */
export interface StalePrices {
  readonly count: number
  /** of so many in the book */
  readonly of: number
  /** the oldest of all prices, old or not */
  readonly oldest: PriceSource
}

/** Day and supplier of one price: its own, or the book's. */
export function sourceOf(
  book: Pick<PriceBook, 'date' | 'supplier'>,
  { date = book.date, supplier = book.supplier }: Partial<PriceSource>,
): PriceSource {
  return { date, supplier }
}

/** How many prices of a book are older than is good on a day, and which is the oldest. */
export function stalePrices(book: PriceBook, today: string): StalePrices {
  const entries = [...book.lumber.flatMap(({ stock }) => stock), ...book.goods]
  const sources = entries.flatMap((entry) =>
    [entry, ...(entry.offers ?? [])].map((priced: Partial<PriceSource>) => sourceOf(book, priced)),
  )
  const oldest = sources.reduce((least, one) => (one.date < least.date ? one : least), sourceOf(book, {}))
  return {
    count: sources.filter(({ date }) => bookAge(date, today) > OLD_AFTER_DAYS).length,
    of: sources.length,
    oldest: sources.length === 0 ? sourceOf(book, {}) : oldest,
  }
}
