import type { RowFault } from '../cut-list/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import type { UnitPrice } from '../units/index.ts'
import type { PriceMeaning } from './meanings.ts'

/** A list of prices as it is given, with what its user says of it. */
export interface PriceListRequest {
  /** CSV, or cells pasted from a spreadsheet */
  readonly text: string
  /** what each column holds, from the left; null: found from the headings */
  readonly columns: readonly PriceMeaning[] | null
  /** ISO date of the prices, where the list does not say it row by row */
  readonly date: string
  /** whose prices they are, where the list does not say it row by row */
  readonly supplier: string
  /** rows that name nothing of the price book are left out; else each of them is a fault */
  readonly leaveOutUnknown: boolean
  /**
   * prices of a supplier who did not sell a thing so far stand beside those that are there; else each takes the place of
   * the book's own
   */
  readonly beside: boolean
}

/** One price as it was and as the list has it. */
export interface PriceChange {
  readonly row: number
  readonly label: string
  /** null: a stock length that the book did not have */
  readonly before: UnitPrice | null
  readonly after: UnitPrice
  readonly date: string
  readonly supplier: string
}

/** What a list would do to a price book; nothing is done yet. */
export interface PriceListTaken {
  readonly book: PriceBook
  readonly changes: readonly PriceChange[]
  /** rows left out since they name nothing of the book, as they are called */
  readonly leftOut: readonly string[]
  /** headings of columns that were not read */
  readonly ignored: readonly string[]
}

/** The list's own faults are told by row and column, as those of a cut list. */
export type PriceListFault = Omit<RowFault, 'source'>
