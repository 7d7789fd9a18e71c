import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'

/** One endless stock length at one price, no runs, nothing that depends on how a board is cut: only boards count. */
export function countsBoardsOnly(problem: Problem, costs: Costs): boolean {
  const [stock] = problem.stocks
  return (
    problem.stocks.length === 1 &&
    problem.runs.length === 0 &&
    problem.measure.mix === null &&
    stock !== undefined &&
    stock.counts === null &&
    stock.supply === Number.POSITIVE_INFINITY &&
    costs.savings === 0 &&
    costs.perPiece === 0 &&
    (costs.board[0] ?? 0) > 0
  )
}
