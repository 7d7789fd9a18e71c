import { columnLetters, type SheetRow } from '../cut-list/index.ts'
import { fail, ok, type Result } from '../units/index.ts'
import { headingsFor, meaningOfHeading, type PriceMeaning } from './meanings.ts'
import type { PriceListFault } from './types.ts'

export interface PriceColumns {
  readonly heading: SheetRow | null
  readonly at: ReadonlyMap<PriceMeaning, number>
  readonly ignored: readonly string[]
}

/** The meaning of each column as it would be read: by its heading where the first row has any that is known. */
export function guessPriceColumns(rows: readonly SheetRow[]): readonly PriceMeaning[] {
  const [first] = rows
  if (first === undefined) return []
  const width = Math.max(...rows.map(({ cells }) => cells.length))
  const found = isHeading(first) ? first.cells.map(meaningOfHeading) : []
  return Array.from({ length: width }, (_, index) => {
    const meaning = found[index] ?? 'nothing'
    // of two columns with one meaning the first is read
    return found.indexOf(meaning) === index ? meaning : 'nothing'
  })
}

/** Where the columns of a list are: as told, else as its headings say. */
export function findPriceColumns(
  rows: readonly SheetRow[],
  told: readonly PriceMeaning[] | null,
): Result<PriceColumns, PriceListFault> {
  const [first] = rows
  const wrong = (message: string, fix: string): Result<never, PriceListFault> =>
    fail({ row: first?.number ?? 0, line: first?.line ?? 1, column: 0, heading: '', message, fix })
  if (first === undefined) return wrong('the list is empty', 'give a row of headings, and rows below it')
  const heading = isHeading(first) || (told !== null && isWords(first)) ? first : null
  const meanings = told ?? guessPriceColumns(rows)
  const at = new Map<PriceMeaning, number>()
  for (const [index, meaning] of meanings.entries()) {
    if (meaning === 'nothing') continue
    const earlier = at.get(meaning)
    if (earlier !== undefined) {
      return wrong(
        `columns ${columnLetters(earlier + 1)} and ${columnLetters(index + 1)} are both said to be the ${meaning}`,
        'give each meaning to one column',
      )
    }
    at.set(meaning, index)
  }
  const say = 'or say what each column holds'
  if (!at.has('price'))
    return wrong('no column is known to hold the prices', `head it ${headingsFor('price')}, ${say}`)
  if (!at.has('code') && !at.has('item')) {
    return wrong(
      'no column is known to say what the prices are of',
      `head it ${headingsFor('code')}, or ${headingsFor('item')}, ${say}`,
    )
  }
  const ignored = (heading?.cells ?? []).filter(
    (cell, index) => cell !== '' && (meanings[index] ?? 'nothing') === 'nothing',
  )
  return ok({ heading, at, ignored })
}

/** A heading has a known word, and no cell that begins as a number does. */
function isHeading(row: SheetRow): boolean {
  return isWords(row) && row.cells.some((cell) => meaningOfHeading(cell) !== 'nothing')
}

function isWords({ cells }: SheetRow): boolean {
  return cells.some((cell) => /\p{L}/u.test(cell)) && !cells.some((cell) => /^[-+$]?\s*[\d.]/.test(cell))
}
