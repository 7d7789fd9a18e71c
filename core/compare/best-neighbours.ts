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
 * Up to one width on each side, within 2 ft, whose cost lies furthest below what the size alone would make it
 * (the deck's own cost per foot of width). None where every neighbour costs what its size says, or more.
 */
export function bestNeighbours(rows: readonly CompareRow[], width: Ticks): readonly Neighbour[] {
  const own = rows.find((row) => row.width === width && row.fault === null)
  if (own === undefined) return []
  return (['narrower', 'wider'] as const).flatMap((side) => {
    const near = rows.filter(
      (row) => row.fault === null && sideOf(row, width) === side && distance(row, width) <= REACH,
    )
    const best = near.reduce<CompareRow | null>(
      (found, row) => (found === null || bargain(row, own) > bargain(found, own) ? row : found),
      null,
    )
    return best === null || bargain(best, own) <= 0 ? [] : [neighbour(best, own, side)]
  })
}

function sideOf(row: CompareRow, width: Ticks) {
  return row.width === width ? null : row.width < width ? 'narrower' : 'wider'
}

function distance(row: CompareRow, width: Ticks): number {
  return Math.abs(row.width - width)
}

/** Cents by which a row costs less than its width at the own deck's cost per width. */
function bargain(row: CompareRow, own: CompareRow): number {
  return (own.cost * row.width) / own.width - row.cost
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
