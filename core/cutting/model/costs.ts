import { savingOf } from './board-cost.ts'
import type { Pattern, Problem } from './problem.ts'

/** What the search minimises, in whole units of any kind; cents for the least cost. */
export interface Costs {
  /** per stock type, before savings */
  readonly board: readonly number[]
  readonly perPiece: number
  /** per run, per arc */
  readonly arcs: readonly (readonly number[])[]
  /** per run, per cap; null: the cap is hard */
  readonly excess: readonly (readonly (number | null)[])[]
  /** per stock type, per count choice */
  readonly counts: readonly (readonly number[])[]
  /** what a cent saved by a board's use counts for; 0: a board costs the same however it is cut */
  readonly savings: number
  /** part that no choice changes */
  readonly constant: number
}

export function costsInCents(problem: Problem): Costs {
  return {
    board: problem.stocks.map((stock) => stock.base),
    perPiece: problem.perPiece,
    arcs: problem.runs.map((run) => run.arcs.map((arc) => arc.cost)),
    excess: problem.runs.map((run) => run.caps.map((cap) => cap.excess)),
    counts: problem.stocks.map((stock) => (stock.counts ?? []).map((choice) => choice.cost)),
    savings: problem.savings ? 1 : 0,
    constant: 0,
  }
}

export function savingIn(problem: Problem, costs: Costs, stock: number, used: number): number {
  return costs.savings === 0 ? 0 : costs.savings * savingOf(problem, stock, used)
}

export function costIn(problem: Problem, costs: Costs, pattern: Pattern): number {
  const pieces = pattern.counts.reduce((sum, count) => sum + count, 0)
  const base = costs.board[pattern.stock] ?? 0
  return base + pieces * costs.perPiece - savingIn(problem, costs, pattern.stock, pattern.used)
}
