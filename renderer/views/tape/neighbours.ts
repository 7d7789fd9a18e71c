import type { CompareRow } from '../../../core/compare/index.ts'
import { feet, printLength, TICKS_PER_FOOT, type Ticks } from '../../../core/units/index.ts'
import { printDollars } from '../../state/print.ts'

/** A width near the job's that costs less per square foot, and what taking it would change. */
export interface Neighbour {
  readonly width: Ticks
  readonly perSquareFoot: number
  /** change of price (or of cost, where an owner builds) in cents */
  readonly change: number
  readonly saves: boolean
  readonly text: string
}

const REACH = feet(4)

export interface Here {
  readonly width: Ticks
  readonly depth: Ticks
  /** price, or cost where an owner builds, in cents */
  readonly amount: number
  readonly perSquareFoot: number
  readonly basis: 'price' | 'cost'
}

/**
 * The best width to either side within 4 ft: the least per square foot, the nearer among equals.
 * None where no width on that side beats the present one.
 */
export function neighbours(rows: readonly CompareRow[], here: Here): readonly Neighbour[] {
  const near = rows.filter(
    (row) =>
      row.fault === null &&
      row.failing === 0 &&
      row.width !== here.width &&
      Math.abs(row.width - here.width) <= REACH,
  )
  const sides = [near.filter((row) => row.width < here.width), near.filter((row) => row.width > here.width)]
  return sides.flatMap((side) => {
    const best = side.reduce<CompareRow | null>(
      (found, row) => (found === null || beats(row, found, here) ? row : found),
      null,
    )
    return best && best.perSquareFoot < here.perSquareFoot ? [named(best, here)] : []
  })
}

function beats(a: CompareRow, b: CompareRow, here: Here): boolean {
  if (a.perSquareFoot !== b.perSquareFoot) return a.perSquareFoot < b.perSquareFoot
  return Math.abs(a.width - here.width) < Math.abs(b.width - here.width)
}

function named(row: CompareRow, here: Here): Neighbour {
  const change = row[here.basis] - here.amount
  const area = ((row.width - here.width) / TICKS_PER_FOOT) * (here.depth / TICKS_PER_FOOT)
  const joints =
    row.framingJoints === 0
      ? 'no joints'
      : `${row.framingJoints} ${row.framingJoints === 1 ? 'joint' : 'joints'}`
  const what = area > 0 ? `${signed(change)} for ${area.toFixed(1)} sq ft` : `${joints}, ${signed(change)}`
  return {
    width: row.width,
    perSquareFoot: row.perSquareFoot,
    change,
    saves: change < 0,
    text: `${printLength(row.width)}: ${what}`,
  }
}

function signed(amount: number): string {
  return `${amount < 0 ? '−' : '+'}${printDollars(Math.abs(amount))}`
}
