import { readDelimited } from '../cut-list/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { fail, isDate, ok, type Result } from '../units/index.ts'
import { changedBook } from './changed-book.ts'
import { findPriceColumns } from './find-columns.ts'
import { knownItems } from './known-items.ts'
import { type PricedRow, readPriceRow } from './read-row.ts'
import type { PriceListFault, PriceListRequest, PriceListTaken } from './types.ts'

/** Longest text that is read: 100 characters for each of 20,000 rows. */
export const LONGEST_PRICE_LIST = 2_000_000

/**
 * What a list of prices would make of a price book: all of it, or every fault by its row and column and nothing. The
 * book keeps what the list does not speak of; each price that is taken has its day and its supplier from then on.
 */
export function takePriceList(
  book: PriceBook,
  request: PriceListRequest,
): Result<PriceListTaken, readonly PriceListFault[]> {
  const { text, columns: told, leaveOutUnknown } = request
  if (text.length > LONGEST_PRICE_LIST)
    return fail([whole(`the list has ${text.length} characters`, `keep it under ${LONGEST_PRICE_LIST}`)])
  const sheet = readDelimited(text)
  if (!sheet.ok) return fail([{ heading: '', ...sheet.error }])
  const rows = sheet.value.filter(({ cells }) => cells.some((cell) => cell !== ''))
  const columns = findPriceColumns(rows, told)
  if (!columns.ok) return fail([columns.error])
  const { heading, at, ignored } = columns.value
  const faults: PriceListFault[] = []
  if (!isDate(request.date) && !(request.date === '' && at.has('date')))
    faults.push(whole('the list is of no day', 'say of which day its prices are, such as 2026-11-01'))

  const known = knownItems(book)
  const read: PricedRow[] = []
  const leftOut: string[] = []
  for (const row of heading === null ? rows : rows.slice(1)) {
    const one = readPriceRow(row, columns.value, known, request)
    if (one.kind === 'priced') read.push(one)
    else if (one.kind === 'unknown' && leaveOutUnknown) leftOut.push(one.name)
    else faults.push(...one.faults)
  }
  const changed = changedBook(book, read, request, faults)
  if (read.length === 0 && faults.length === 0)
    faults.push(
      whole(
        'no row of the list is of anything in the price book',
        'look at what each column holds; the price book is changed by the yard’s codes or by names as it has them',
      ),
    )
  return faults.length > 0 ? fail(byRow(faults)) : ok({ ...changed, leftOut, ignored })
}

function byRow(faults: readonly PriceListFault[]): readonly PriceListFault[] {
  return faults.toSorted((a, b) => a.row - b.row || a.column - b.column)
}

function whole(message: string, fix: string): PriceListFault {
  return { row: 0, line: 1, column: 0, heading: '', message, fix }
}
