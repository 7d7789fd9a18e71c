import type { Line, Pricing, Totals } from '../pricing/index.ts'
import { type Cents, cents } from '../units/index.ts'

type Figures = Pick<Line, 'thousandths' | 'price' | 'amount'>

/** One line of a price beside the same line of an earlier one. */
export interface LineChange {
  readonly id: Line['id']
  readonly group: Line['group']
  readonly label: string
  readonly unit: string
  /** null: the line was not there, or is no more */
  readonly before: Figures | null
  readonly after: Figures | null
  readonly difference: Cents
}

/** What changed between two prices of one job; the differences sum to that of the prices with tax. */
export interface PriceDifference {
  /** lines whose quantity or price differs, those that are there now first, each as its price has it */
  readonly lines: readonly LineChange[]
  /** taxes and shares that follow from the lines, as far as they differ */
  readonly sums: readonly { readonly label: string; readonly difference: Cents }[]
}

/** The lines and sums in which two prices differ. */
export function priceDifference(before: Pricing, after: Pricing): PriceDifference {
  const was = new Map(before.lines.map((line) => [line.id, line]))
  const is = new Set(after.lines.map(({ id }) => id))
  const lines = [
    ...after.lines.map((line) => changeOf(line, was.get(line.id) ?? null, line)),
    ...before.lines.filter(({ id }) => !is.has(id)).map((line) => changeOf(line, line, null)),
  ]
  return {
    lines: lines.filter(({ before: old, after: now }) => old === null || now === null || differs(old, now)),
    sums: SUMS.map(([label, read]) => ({
      label,
      difference: cents(read(after.totals) - read(before.totals)),
    })).filter(({ difference }) => difference !== 0),
  }
}

const SUMS: readonly (readonly [string, (totals: Totals) => number])[] = [
  ['Sales tax on material', ({ tax }) => tax],
  ['Contingency', ({ contingency }) => contingency],
  ['Overhead', ({ overhead }) => overhead],
  ['Margin or markup', ({ price, cost }) => price - cost],
  ['Tax on the price', ({ priceTax }) => priceTax],
]

function changeOf({ id, group, label, unit }: Line, before: Line | null, after: Line | null): LineChange {
  return {
    id,
    group,
    label,
    unit,
    before: figuresOf(before),
    after: figuresOf(after),
    difference: cents((after?.amount ?? 0) - (before?.amount ?? 0)),
  }
}

function figuresOf(line: Line | null): Figures | null {
  return line === null ? null : { thousandths: line.thousandths, price: line.price, amount: line.amount }
}

function differs(a: Figures, b: Figures): boolean {
  return a.thousandths !== b.thousandths || a.price !== b.price || a.amount !== b.amount
}
