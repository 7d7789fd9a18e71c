import { type Line, type PriceBook, stockOffers } from '../../pricing/index.ts'
import { quantity } from './table.ts'

type Good = PriceBook['goods'][number]

/** A quantity of a good as a yard counts it out: "9 × 4 ft piece"; nothing where it is counted one by one, or the book is silent. */
export function packsText(line: Line, good: Good | undefined): string {
  if (good === undefined) return ''
  const from = line.source?.supplier
  const offer = from === undefined ? undefined : good.offers?.find(({ supplier }) => supplier === from)
  const pack = offer?.pack ?? good.pack
  if (line.thousandths % pack !== 0) return ''
  const name = pack === good.pack && good.note !== '' ? good.note : packOf(pack, line.unit)
  return name === '' ? '' : `${line.thousandths / pack} × ${name}`
}

function packOf(pack: number, unit: string): string {
  return pack === 1000 ? '' : `${quantity(pack)} ${unit}`
}

/** What the yard's terms ask of a length: whole packs, or a least count. In words for the order; nothing where there are none. */
export function stockTerms(book: PriceBook, stockId: string): string {
  const offer = book.lumber
    .flatMap(({ stock }) => stock.flatMap((entry) => stockOffers(entry, book)))
    .find(({ id }) => id === stockId)
  const { pack = 1, minimum = 1 } = offer ?? {}
  return [...(pack > 1 ? [`in packs of ${pack}`] : []), ...(minimum > 1 ? [`${minimum} at least`] : [])].join(
    ', ',
  )
}
