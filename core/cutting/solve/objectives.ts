import type { Costs } from '../model/costs.ts'
import { costsInCents } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { Objective } from '../types.ts'
import { lengthsBought } from './search-rules.ts'
import type { Solution } from './solution.ts'

/** What an objective counts, as costs for the search; lengths are counted by the rules instead. */
function costsOf(problem: Problem, objective: Objective): Costs | null {
  const none: Costs = {
    board: problem.stocks.map(() => 0),
    perPiece: 0,
    arcs: problem.runs.map((run) => run.arcs.map(() => 0)),
    excess: problem.runs.map((run) => run.caps.map((cap) => (cap.excess === null ? null : 0))),
    counts: problem.stocks.map((stock) => (stock.counts ?? []).map(() => 0)),
    savings: 0,
    constant: 0,
  }
  switch (objective) {
    case 'least cost':
      return costsInCents(problem)
    case 'fewest joints':
      return { ...none, arcs: problem.runs.map((run) => run.arcs.map((arc) => (arc.point < 0 ? 0 : 1))) }
    case 'least waste':
      return { ...none, board: problem.stocks.map((stock) => stock.option.length / lengthStep(problem)) }
    case 'fewest lengths':
      return null
  }
}

/**
 * What every stock length is a whole multiple of, so that lengths are counted in small numbers: weighed above the cents
 * of an order they would otherwise be too large for the LP engine's arithmetic.
 */
function lengthStep(problem: Problem): number {
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b))
  return problem.stocks.reduce((step, stock) => common(step, stock.option.length), 0) || 1
}

/** Value of a solution under one objective. */
export function measure(problem: Problem, solution: Solution, objective: Objective): number {
  switch (objective) {
    case 'least cost':
      return solution.cost
    case 'fewest joints':
      return solution.flows.reduce(
        (sum, flow, r) =>
          sum +
          flow.reduce((joints, n, a) => joints + ((problem.runs[r]?.arcs[a]?.point ?? -1) < 0 ? 0 : n), 0),
        0,
      )
    case 'least waste':
      return (
        solution.boards.reduce(
          (sum, { pattern, count }) => sum + count * (problem.stocks[pattern.stock]?.option.length ?? 0),
          0,
        ) / lengthStep(problem)
      )
    case 'fewest lengths':
      return lengthsBought(problem, solution).length
  }
}

/** Several objectives as one: each outweighs all that a plan could differ by in those after it. */
export function combined(problem: Problem, objectives: readonly Objective[], known: Solution): Costs {
  const parts = objectives.flatMap((objective) => {
    const costs = costsOf(problem, objective)
    return costs === null ? [] : [{ costs, range: 4 * measure(problem, known, objective) + 1000 }]
  })
  const weights = parts.map((_, k) => parts.slice(k + 1).reduce((product, part) => product * part.range, 1))
  const sum = (pick: (costs: Costs) => number): number =>
    parts.reduce((total, { costs }, k) => total + (weights[k] ?? 1) * pick(costs), 0)
  const shape = costsInCents(problem)
  return {
    board: shape.board.map((_, s) => sum((costs) => costs.board[s] ?? 0)),
    perPiece: sum((costs) => costs.perPiece),
    arcs: shape.arcs.map((arcs, r) => arcs.map((_, a) => sum((costs) => costs.arcs[r]?.[a] ?? 0))),
    excess: shape.excess.map((caps, r) =>
      caps.map((cap, c) => (cap === null ? null : sum((costs) => costs.excess[r]?.[c] ?? 0))),
    ),
    counts: shape.counts.map((choices, s) =>
      choices.map((_, c) => sum((costs) => costs.counts[s]?.[c] ?? 0)),
    ),
    savings: sum((costs) => costs.savings),
    constant: 0,
  }
}
