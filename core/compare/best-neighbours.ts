import { type Cents, cents, feet, printLength, printMoney, type Ticks, ticks } from '../units/index.ts'
import type { CompareRow } from './types.ts'

/** A width near the deck's own that is a better bargain than its size explains. */
export interface Neighbour {
  readonly width: Ticks
  readonly side: 'narrower' | 'wider'
  /** against the deck's own width; below zero: a saving */
  readonly cost: Cents
  readonly price: Cents
  readonly lumber: Cents
  readonly perSquareFoot: Cents
  readonly joints: number
  /** one line: what it costs or saves, and why */
  readonly message: string
}

/** How far a neighbour is looked for. */
const REACH = feet(2)

/**
 * Up to one width on each side, within 2 ft, whose cost lies furthest below what its size alone would make it: the
 * deck's own cost, and what a foot more costs over the whole stretch looked at. None where no neighbour is better.
 */
export function bestNeighbours(rows: readonly CompareRow[], width: Ticks): readonly Neighbour[] {
  const own = rows.find((row) => row.width === width && row.fault === null)
  if (own === undefined) return []
  const near = rows.filter((row) => row.fault === null && Math.abs(row.width - width) <= REACH)
  const trend = costPerTick(near)
  const bargain = (row: CompareRow) => own.cost + trend * (row.width - own.width) - row.cost
  return (['narrower', 'wider'] as const).flatMap((side) => {
    const best = near
      .filter((row) => sideOf(row, width) === side)
      .reduce<CompareRow | null>(
        (found, row) => (found && bargain(found) >= bargain(row) ? found : row),
        null,
      )
    return best === null || bargain(best) <= 0 ? [] : [neighbour(best, own, side)]
  })
}

function sideOf(row: CompareRow, width: Ticks) {
  return row.width === width ? null : row.width < width ? 'narrower' : 'wider'
}

/** Cents that a tick more of width costs, from the narrowest row to the widest. */
function costPerTick(rows: readonly CompareRow[]): number {
  const sorted = [...rows].sort((a, b) => a.width - b.width)
  const [first, last] = [sorted[0], sorted.at(-1)]
  if (first === undefined || last === undefined || last.width === first.width) return 0
  return (last.cost - first.cost) / (last.width - first.width)
}

function neighbour(row: CompareRow, own: CompareRow, side: Neighbour['side']): Neighbour {
  const cost = cents(row.cost - own.cost)
  const lumber = cents(row.lumber - own.lumber)
  const fits = row.fitsWithDecking && !own.fitsWithDecking
  const why = fits ? ', for every run and course then comes whole from one board' : jointsChange(row, own)
  const by = printLength(ticks(Math.abs(row.width - own.width)))
  return {
    width: row.width,
    side,
    cost,
    price: cents(row.price - own.price),
    lumber,
    perSquareFoot: row.perSquareFoot,
    joints: row.joints,
    message: `${by} ${side}, ${printLength(row.width)}: ${moneyChange(cost)} (lumber ${moneyChange(lumber)})${why}.`,
  }
}

function jointsChange(row: CompareRow, own: CompareRow): string {
  const change = row.joints - own.joints
  if (change === 0) return ''
  const count = Math.abs(change)
  return `, with ${count} ${count === 1 ? 'joint' : 'joints'} ${change < 0 ? 'fewer' : 'more'}`
}

function moneyChange(change: Cents): string {
  if (change === 0) return 'costs the same'
  return change < 0 ? `saves ${printMoney(cents(-change))}` : `costs ${printMoney(change)} more`
}
