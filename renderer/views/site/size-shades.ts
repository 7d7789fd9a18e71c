import type { CompareRow } from '../../../core/compare/index.ts'

/** Shades a size can have, 0 the cheapest per square foot. */
export const SHADES = 5

/** The shade of each priced amount between the least and the greatest of all; one shade where all are alike. */
export function shadeOf(amounts: readonly number[]): (amount: number) => number {
  const least = Math.min(...amounts)
  const range = Math.max(...amounts) - least
  return (amount) => (range === 0 ? 0 : Math.min(SHADES - 1, Math.floor(((amount - least) / range) * SHADES)))
}

/** A widening by one step that costs clearly more than such a step usually does. */
export interface Jump {
  readonly from: CompareRow
  readonly to: CompareRow
  /** more cost than the row before, cents */
  readonly more: number
}

/** A step is a jump from this share of the middle step on. */
const CLEARLY = 1.5

/**
 * The steps along the widths, in order, that cost most beyond the middle one.
 * @param rows by width, each with its changes against the row before
 */
export function jumpsOf(rows: readonly CompareRow[], most: number): readonly Jump[] {
  const priced = rows.filter((row) => row.fault === null)
  const steps = priced.slice(1).map((to, n) => {
    const from = priced[n] ?? to
    return { from, to, more: to.cost - from.cost }
  })
  const middle = steps.map(({ more }) => more).sort((a, b) => a - b)[Math.floor(steps.length / 2)] ?? 0
  return steps
    .filter(({ more }) => more > 0 && more > middle * CLEARLY)
    .sort((a, b) => b.more - a.more)
    .slice(0, most)
    .sort((a, b) => a.to.width - b.to.width)
}
