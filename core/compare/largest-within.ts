import type { Cents } from '../units/index.ts'
import type { CompareRow } from './types.ts'

/** What is to be paid: an owner pays the cost, a customer the price. */
export type Paid = 'cost' | 'price'

/**
 * The largest of the compared sizes that a budget pays for, by area; of equal areas the one that costs less. Sizes that
 * have no price or fail a check are none. null: the budget pays for none of them.
 */
export function largestWithin(rows: readonly CompareRow[], budget: Cents, paid: Paid): CompareRow | null {
  const area = (row: CompareRow): number => row.width * row.depth
  return sound(rows)
    .filter((row) => row[paid] <= budget)
    .reduce<CompareRow | null>((best, row) => {
      if (best === null) return row
      const larger = area(row) - area(best)
      return larger > 0 || (larger === 0 && row[paid] < best[paid]) ? row : best
    }, null)
}

/** The one of the compared sizes that asks for least; null where none has a price and passes. */
export function leastOf(rows: readonly CompareRow[], paid: Paid): CompareRow | null {
  return sound(rows).reduce<CompareRow | null>(
    (best, row) => (best === null || row[paid] < best[paid] ? row : best),
    null,
  )
}

function sound(rows: readonly CompareRow[]): readonly CompareRow[] {
  return rows.filter((row) => row.fault === null && row.failing === 0)
}
