import type { BoardTable } from '../bound/board-table.ts'
import { boardValues, type Prices } from '../bound/dual-bound.ts'
import { KnapsackTable } from '../bound/knapsack-table.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { tableFor } from './generate.ts'

/** Most cells of it kept at once: 8 bytes each. */
const MOST_CELLS = 6_000_000

/** Under given prices, the most that a board can still earn from narrower pieces: what cuts a search of patterns short. */
export interface Completion {
  /** per item, what it earns */
  readonly profits: Float64Array
  /** per stock type, the best worth of a board */
  readonly values: readonly number[]
  /** most pieces of each item that it counts on */
  readonly limits: readonly number[]
  /** the most that items from this one on can earn in so much room, beside ends in that state of the problem's mix */
  readonly stillToEarn: (item: number, room: number, state: number) => number
}

/** Of pieces up to the given limits; of fewer it says too much, which is still true. null: too large to keep. */
export function completionOf(
  problem: Problem,
  costs: Costs,
  table: BoardTable,
  prices: Prices,
  limits: readonly number[],
): Completion | null {
  const n = problem.items.length
  const { mix } = problem.measure
  const board = problem.capacity + 1
  // where there are too many states, what the rest can earn is told as if no end of it were left alone: more, so still true
  const states = mix === null || n * board * mix.states > MOST_CELLS ? 1 : mix.states
  const size = board * states
  if (n * size > MOST_CELLS) return null
  const values = boardValues(problem, costs, table, prices)
  const profits = Float64Array.from(
    problem.items,
    (_, i) => (prices.items[i] ?? 0) - costs.perPiece * prices.scale,
  )
  const earned = new Float64Array((n + 1) * size)
  const widths = problem.items.map((item) => item.width)
  const ofTheRest =
    states === (mix?.states ?? 1)
      ? tableFor(problem, limits, table)
      : new KnapsackTable(widths, limits, problem.capacity)
  ofTheRest.fill(profits, false, (item) => {
    earned.set(ofTheRest.value, (item + 1) * size)
  })
  const stillToEarn = (item: number, room: number, state: number): number => {
    if (mix === null || states === 1) return earned[item * size + room] as number
    let most = Number.NEGATIVE_INFINITY
    for (let rest = 0; rest < mix.states; rest++) {
      const left = room - (mix.held[mix.joined[state * mix.states + rest] as number] as number)
      if (left >= 0) most = Math.max(most, earned[item * size + rest * board + left] as number)
    }
    return most
  }
  return { profits, values, limits, stillToEarn }
}
