import { stockOffers } from '../suppliers/offers.ts'
import type { Line, PriceBook, PriceSource } from '../types.ts'

/** The lines of boards with day and supplier of their price, where it has ones of its own in the book. */
export function withSources(lines: readonly Line[], book: PriceBook): readonly Line[] {
  const own = new Map<Line['id'], PriceSource>()
  for (const { stock } of book.lumber)
    for (const entry of stock)
      for (const { id, date, supplier } of stockOffers(entry, book)) {
        if (date === undefined && supplier === book.supplier) continue
        const source = { date: date ?? book.date, supplier }
        for (const line of [`lumber-${id}`, `blocks-${id}`, `spare-${id}`]) own.set(line, source)
      }
  if (own.size === 0) return lines
  return lines.map((line) => {
    const source = own.get(line.id)
    return source === undefined ? line : { ...line, source }
  })
}
