import { type Fault, readPlacedJson } from '../../core/job/index.ts'
import { type PriceBook, readPriceBook } from '../../core/pricing/index.ts'
import { fail, type Result } from '../../core/units/index.ts'

/** Characters: a price book is some hundred lines; what is far longer is something else. */
export const LONGEST_PRICES = 2_000_000

const PRICE_TEXT = {
  name: 'price book',
  sample: '{ "name": "Prices of spring", "date": "2026-03-01", … }',
  longest: LONGEST_PRICES,
}

/** Reads a price book's text: JSON, with comments and trailing commas allowed; every fault with its place in the text. */
export function readPriceText(text: string): Result<PriceBook, readonly Fault[]> {
  const json = readPlacedJson(text, PRICE_TEXT)
  if (!json.ok) return json
  const read = readPriceBook(json.value.value)
  if (read.ok) return read
  return fail(read.error.map((fault) => ({ ...fault, ...json.value.placeOf(dotted(fault.path)) })))
}

/** `lumber[2].stock[0].price` as `lumber.2.stock.0.price`. */
function dotted(path: string): string {
  return path.replace(/\[(\d+)\]/g, '.$1').replace(/^\./, '')
}
