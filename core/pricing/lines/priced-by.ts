import { goodLineId } from '../scope.ts'
import type { Line, PriceBook, PriceSource } from '../types.ts'

/** The lines with day and supplier of their price, where it has ones of its own in the book. */
export function withSources(lines: readonly Line[], book: PriceBook): readonly Line[] {
  const own = new Map<Line['id'], PriceSource>()
  const add = (ids: readonly string[], { date, supplier }: Partial<PriceSource>) => {
    if (date === undefined && supplier === undefined) return
    for (const id of ids) own.set(id, { date: date ?? book.date, supplier: supplier ?? book.supplier })
  }
  for (const { stock } of book.lumber)
    for (const entry of stock) add([`lumber-${entry.code}`, `spare-${entry.code}`], entry)
  for (const good of book.goods) add([goodLineId(good.sku)], good)
  if (own.size === 0) return lines
  return lines.map((line) => {
    const source = own.get(line.id)
    return source === undefined ? line : { ...line, source }
  })
}
