import type { Cents, Ticks } from '../units/index.ts'

export interface CompareRow {
  readonly width: Ticks
  readonly cost: Cents
  readonly price: Cents
  readonly perSquareFoot: Cents
  readonly lumber: Cents
  readonly joints: number
  readonly framingJoints: number
  readonly boards: number
  /** offcuts, kerf and trims ÷ bought length, in 1/100 % */
  readonly waste: number
  readonly fitsStock: boolean
  readonly fitsWithDecking: boolean
  readonly proven: boolean
  readonly bound: Cents
  readonly failing: number
  /** why it differs from the row before: the lines that changed most, each with its cents */
  readonly changes: readonly { readonly label: string; readonly change: Cents }[]
  /** null where the width could be priced; else why not */
  readonly fault: string | null
}
