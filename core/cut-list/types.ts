import type { CutPlan, Infeasible } from '../cutting/index.ts'
import type { Cents, Ticks } from '../units/index.ts'
import type { MEANINGS } from './meanings.ts'

/** What a column of a list holds; 'nothing' is left unread. */
export type Meaning = (typeof MEANINGS)[number]

/** Which of the two texts: the list itself, or the stock given beside it. */
export type Source = 'list' | 'stock'

/** What is wrong with a list: where, what, and what would be right. Rows and columns count from 1, as in a spreadsheet. */
export interface RowFault {
  readonly source: Source
  /** 0 where the list as a whole is meant */
  readonly row: number
  /** line of the text on which the row begins */
  readonly line: number
  /** 0 where the row as a whole is meant */
  readonly column: number
  /** heading of the column, or '' */
  readonly heading: string
  readonly message: string
  readonly fix: string
}

/** One row of pieces. */
export interface ListPiece {
  readonly row: number
  readonly line: number
  /** as written, '' where the list names none */
  readonly product: string
  readonly mark: string
  /** finished length */
  readonly length: Ticks
  /** cut so much longer and cut off in place */
  readonly wild: Ticks
  readonly count: number
}

/** One row of stock: a length on sale, or offcuts on hand. */
export interface ListStock {
  readonly source: Source
  readonly row: number
  readonly line: number
  readonly product: string
  readonly code: string
  readonly length: Ticks
  /** null where none is given; offcuts on hand cost nothing unless a price is given */
  readonly price: Cents | null
  /** null: as many as wanted */
  readonly supply: number | null
  /** bought in multiples of this, and no fewer than that if any; null: one by one */
  readonly pack: number | null
  readonly minimum: number | null
  /** price of each once so many are bought */
  readonly priceBreak: { readonly from: number; readonly price: Cents } | null
  readonly offcut: boolean
}

/** A list as read, whole. */
export interface CutList {
  readonly pieces: readonly ListPiece[]
  readonly stock: readonly ListStock[]
  /** headings of columns that were not read */
  readonly ignored: readonly string[]
}

export interface ReadOptions {
  readonly source: Source
  /** what each column holds, from the left; found from headings and contents where absent */
  readonly columns?: readonly Meaning[]
}

/** How the saw cuts. */
export interface SawSettings {
  readonly kerf: Ticks
  /** taken off each end of a bought board; offcuts on hand are used as they are */
  readonly endTrim: Ticks
}

/** A board length as the order names it. */
export interface NamedStock {
  readonly id: string
  readonly code: string
  readonly length: Ticks
  readonly offcut: boolean
}

/** One product of a list with its plan. */
export interface ListPlan {
  /** '' where the list names no product */
  readonly product: string
  readonly stock: readonly NamedStock[]
  readonly stockFrom: 'list' | 'price book'
  /**
   * length that one unit of the plan's cost, bound and gap stands for, where stock has no prices and the least
   * length is bought; null where costs are cents
   */
  readonly lengthUnit: Ticks | null
  readonly plan: CutPlan
}

/** Every product of a list, planned or said to be impossible. */
export interface CutListResult {
  readonly plans: readonly ListPlan[]
  readonly infeasible: readonly Infeasible[]
  /** the price book, where stock of any product came from it */
  readonly book: { readonly name: string; readonly date: string; readonly invented: boolean } | null
  /** what a reader should know of how the list was taken */
  readonly remarks: readonly string[]
}

export type CutListAnswer =
  | { readonly ok: true; readonly result: CutListResult }
  | { readonly ok: false; readonly faults: readonly RowFault[] }
