import { toFeet } from '../units/index.ts'
import { productName } from './product-name.ts'
import { goodLineId } from './scope.ts'
import { stockOffers } from './suppliers/offers.ts'
import type { Line, PriceBook } from './types.ts'

/** A line in words by its id alone, as far as the price book knows it; else its id. */
export function lineWords(id: Line['id'], book: PriceBook): string {
  const [, kind = '', of = ''] = /^(lumber|spare|labour-task)-(.*)$/s.exec(id) ?? []
  if (kind === 'labour-task') return book.rates.find((rate) => rate.id === of)?.label ?? id
  if (kind !== '') {
    for (const { product, stock } of book.lumber) {
      const found = stock.find((entry) => stockOffers(entry, book).some(({ id }) => id === of))
      if (found === undefined) continue
      const name = `${productName(product)}, ${toFeet(found.length)} ft`
      return kind === 'spare' ? `Spare ${name}` : name
    }
    return id
  }
  return book.goods.find(({ sku }) => goodLineId(sku) === id)?.label ?? id
}
