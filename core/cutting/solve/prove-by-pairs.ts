import type { LpEngine } from '../lp-port.ts'
import { patternOf } from '../model/board-cost.ts'
import type { Costs } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import type { PairNode } from './pair-node.ts'
import { askPairs } from './pairs.ts'
import { type Solution, solutionOf } from './solution.ts'
import type { Work } from './work.ts'

export interface PairProof {
  readonly best: Solution
  readonly bound: number
}

/** One endless stock length at one price, no runs, nothing that depends on how a board is cut: only boards count. */
export function countsBoardsOnly(problem: Problem, costs: Costs): boolean {
  const [stock] = problem.stocks
  return (
    problem.stocks.length === 1 &&
    problem.runs.length === 0 &&
    stock !== undefined &&
    stock.counts === null &&
    stock.supply === Number.POSITIVE_INFINITY &&
    costs.savings === 0 &&
    costs.perPiece === 0 &&
    (costs.board[0] ?? 0) > 0
  )
}

/** Closes what bands of patterns left open, by branching on pairs: is there a plan with one board less? */
export function proveByPairs(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  start: Solution,
  bound: number,
  patterns: readonly Pattern[],
  mostNodes: number,
  work: Work,
): PairProof {
  const price = costs.board[0] ?? 1
  let best = start
  while (best.cost > bound && !work.stopped()) {
    const boards = Math.round((best.cost - costs.constant) / price) - 1
    const root: PairNode = {
      widths: problem.items.map((item) => item.width),
      demands: problem.items.map((item) => item.demand),
      parts: problem.items.map((_, i) => [i]),
      apart: problem.items.map(() => new Set<number>()),
      fills: patterns.map((pattern) => ({ pieces: pattern.items, counts: pattern.counts })),
    }
    const answer = askPairs(
      root,
      problem.capacity,
      boards,
      engine,
      work,
      Math.min(mostNodes, work.limits.nodes),
    )
    if (answer.refuted) return { best, bound: best.cost }
    if (answer.boards === null) break
    const plan = solutionOf(
      problem,
      costs,
      answer.boards.map((parts) => ({ pattern: patternFrom(problem, parts), count: 1 })),
      [],
    )
    if (plan === null || plan.cost >= best.cost)
      throw new Error('the pair search returned a plan that is none')
    best = plan
  }
  return { best, bound }
}

function patternFrom(problem: Problem, parts: readonly number[]): Pattern {
  const items = [...new Set(parts)].sort((a, b) => a - b)
  return patternOf(
    problem,
    0,
    items,
    items.map((item) => parts.filter((part) => part === item).length),
  )
}
