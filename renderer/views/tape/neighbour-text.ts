import type { CompareRow } from '../../../core/compare/index.ts'
import { printLength, TICKS_PER_FOOT, type Ticks } from '../../../core/units/index.ts'
import { plural, printDifference, printDollars } from '../../state/print.ts'

/** The present deck, as far as a neighbour's words need it. */
export interface Here {
  readonly width: Ticks
  readonly depth: Ticks
  /** price, or cost where an owner builds, in cents */
  readonly amount: number
  readonly basis: 'price' | 'cost'
}

/** What taking a neighbour would change: a wider one by what the added area costs, a narrower one by its joints. */
export function neighbourText(
  row: CompareRow,
  here: Here,
): { readonly text: string; readonly saves: boolean } {
  const change = row[here.basis] - here.amount
  const money = printDifference(change, printDollars)
  const area = ((row.width - here.width) / TICKS_PER_FOOT) * (here.depth / TICKS_PER_FOOT)
  const joints = row.framingJoints === 0 ? 'no framing joints' : plural(row.framingJoints, 'framing joint')
  const what = area > 0 ? `${money} for ${area.toFixed(1)} sq ft` : `${joints}, ${money}`
  return { text: `${printLength(row.width)}: ${what}`, saves: change < 0 }
}
