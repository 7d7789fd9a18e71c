import type { Cents, Ticks } from '../units/index.ts'

/** A sum of like lines, by which two widths are compared. */
export interface ComparePart {
  readonly label: string
  readonly amount: Cents
}

export interface CompareRow {
  readonly width: Ticks
  readonly depth: Ticks
  readonly cost: Cents
  readonly price: Cents
  readonly perSquareFoot: Cents
  /** boards and joints of all cutting plans */
  readonly lumber: Cents
  readonly joints: number
  readonly framingJoints: number
  readonly boards: number
  /** offcuts, kerf, trims and spares ÷ bought length, in 1/100 % */
  readonly waste: number
  readonly fitsStock: boolean
  readonly fitsWithDecking: boolean
  readonly proven: boolean
  /** no lumber order, preferences counted, is below this */
  readonly bound: Cents
  readonly failing: number
  /** what the cost is made of; sums to the cost */
  readonly parts: readonly ComparePart[]
  /** why it differs from the row before: the parts that changed, largest first; see explainRows */
  readonly changes: readonly { readonly label: string; readonly change: Cents }[]
  /** null where the width could be priced; else why not */
  readonly fault: string | null
}
