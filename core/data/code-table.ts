import type { Source } from './types.ts'

/**
 * How a value that is no entry of its axis is taken to the safe side: up or down to the next entry, or to whichever
 * of the two neighbours gives the lesser result. 'exact' axes hold names, or numbers that may not be rounded.
 */
export type SafeSide = 'up' | 'down' | 'lesser of neighbours' | 'exact'

export type TableEntry = number | string

export interface TableAxis {
  /** e.g. "joist span" */
  readonly name: string
  readonly unit: '' | 'ft' | 'in' | 'psf' | 'sq ft' | 'degrees'
  /** ascending where they are numbers */
  readonly entries: readonly TableEntry[]
  readonly safeSide: SafeSide
  /** entries as they are read out, where they are short names */
  readonly labels?: { readonly [entry: string]: string }
}

/** One page of a table, with its own source, for pages of one table were verified to different degrees. */
export interface TableBlock {
  /** one entry of each block axis, in their order */
  readonly at: readonly TableEntry[]
  readonly source: Source
  /** cells by row entry, in the order of the column axis, in the table's unit; null: not permitted */
  readonly rows: { readonly [row: string]: readonly (number | null)[] }
  /** cells that were verified less well than the rest of the page */
  readonly doubts?: readonly {
    readonly row: TableEntry
    readonly column: TableEntry
    readonly source: Source
  }[]
}

/** A published table of two axes, on one or more pages. */
export interface CodeTable {
  readonly id: string
  readonly title: string
  /** unit of the cells */
  readonly unit: 'in'
  readonly blockAxes: readonly TableAxis[]
  readonly rowAxis: TableAxis
  readonly columnAxis: TableAxis
  readonly blocks: readonly TableBlock[]
}
