import type { Cents, Result } from '../units/index.ts'
import { readCountCell, readPriceCell } from './read-cell.ts'
import type { ListStock, Meaning } from './types.ts'

/** How a length on sale is bought. */
export type Purchase = Pick<ListStock, 'pack' | 'minimum' | 'priceBreak'>

/** The cells of one row, by their meaning. */
interface Cells {
  has(meaning: Meaning): boolean
  given(meaning: Meaning): boolean
  read<T>(meaning: Meaning, reader: (text: string) => Result<T, Wrong>): T | null
  wrongAt(meaning: Meaning, wrong: Wrong): void
}
type Wrong = { readonly message: string; readonly fix: string }

const WAYS = ['pack', 'minimum', 'break from', 'break price'] as const

/** Reads pack size, least count and price break of a row of stock; what does not fit together is a fault at its cell. */
export function readPurchase(
  cells: Cells,
  { offcut, price, supply }: { offcut: boolean; price: Cents | null; supply: number | null },
): Purchase {
  if (offcut) {
    for (const way of WAYS) {
      if (!cells.given(way)) continue
      const message = 'an offcut on hand is not bought'
      cells.wrongAt(way, { message, fix: 'leave this cell empty, or put the row among the stock on sale' })
    }
    return { pack: null, minimum: null, priceBreak: null }
  }
  const count = (meaning: Meaning) => (cells.given(meaning) ? cells.read(meaning, readCountCell) : null)
  const pack = count('pack')
  const minimum = count('minimum')
  for (const [meaning, least] of [
    ['pack', pack],
    ['minimum', minimum],
  ] as const) {
    if (supply === null || least === null || least <= supply) continue
    const message = `${least} at least are bought, and ${supply} are to be had`
    cells.wrongAt(meaning, { message, fix: 'make it smaller, or the supply larger' })
  }
  return { pack, minimum, priceBreak: readBreak(cells, price) }
}

function readBreak(cells: Cells, price: Cents | null): Purchase['priceBreak'] {
  const [hasFrom, hasPrice] = [cells.given('break from'), cells.given('break price')]
  if (!hasFrom && !hasPrice) return null
  if (!hasPrice) {
    cells.wrongAt('break from', {
      message: 'a count is given from which another price holds, and no such price',
      fix: 'write what one costs from there on under "break price"',
    })
    return null
  }
  if (!hasFrom) {
    cells.wrongAt('break price', {
      message: 'a price for larger counts is given, and not from which count it holds',
      fix: 'write the count under "break from"',
    })
    return null
  }
  const from = cells.read('break from', readCountCell)
  const then = cells.read('break price', (text) => readPriceCell(text, false))
  if (from === null || then === null) return null
  if (price === null) {
    cells.wrongAt('break price', {
      message: 'this length has a price for larger counts and none for one',
      fix: 'write what one costs under "price"',
    })
    return null
  }
  if (from === 1) {
    cells.wrongAt('break from', {
      message: 'another price from 1 on leaves none for the first price',
      fix: 'write 2 or more, or that price as the price',
    })
    return null
  }
  return { from, price: then }
}
