import type { Cents, Share, Ticks, UnitPrice } from '../../../core/units/index.ts'

/** How a figure is shown; the writer turns it into a number format. */
export type Format =
  | 'money'
  | 'unit price'
  | 'count'
  | 'decimal'
  | 'fixed'
  | 'hours'
  | 'share'
  | 'inches'
  | 'ratio'
  | 'rate'

export interface CellLook {
  readonly bold?: boolean
  /** may be changed by the reader; all else follows from it */
  readonly input?: boolean
  readonly soft?: boolean
  readonly wrap?: boolean
  readonly right?: boolean
  readonly size?: number
  /** line above: a subtotal, a total */
  readonly rule?: 'thin' | 'strong'
  /** name by which formulas and readers find the cell */
  readonly name?: string
  /** columns that the text may run over */
  readonly span?: number
}

/** One cell as data: what it says, not how a spreadsheet stores it. */
export type Cell = CellLook &
  (
    | { readonly kind: 'text'; readonly text: string }
    | { readonly kind: 'number'; readonly value: number; readonly format: Format }
    /** `value` is the core's figure: shown by viewers that do not calculate, and checked against those that do */
    | { readonly kind: 'formula'; readonly formula: string; readonly value: number; readonly format: Format }
    | { readonly kind: 'empty' }
  )

export const empty: Cell = { kind: 'empty' }

export function text(words: string, look: CellLook = {}): Cell {
  return words === '' ? { ...look, kind: 'empty' } : { ...look, kind: 'text', text: words }
}

export function number(value: number, format: Format, look: CellLook = {}): Cell {
  return { ...look, kind: 'number', value, format }
}

export function formula(expression: string, value: number, format: Format, look: CellLook = {}): Cell {
  return { ...look, kind: 'formula', formula: expression, value, format }
}

/** Money and lengths leave the core's integers here, and only here. */
export const dollars = (amount: Cents): number => amount / 100
export const unitDollars = (price: UnitPrice): number => price / 10_000
export const fraction = (part: Share): number => part / 10_000
export const inchesOf = (length: Ticks | number): number => length / 32
