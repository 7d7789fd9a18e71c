import type { Costs } from '../model/costs.ts'
import { costsInCents } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { Objective } from '../types.ts'
import { lengthsBought } from './search-rules.ts'
import type { Solution } from './solution.ts'

/** An objective that costs can count; different lengths are counted by looking at each choice of them. */
export type Counted = Exclude<Objective, 'fewest lengths'>

/** What an objective counts, as costs for the search. */
export function costsOf(problem: Problem, objective: Counted): Costs {
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
  }
}

/**
 * What every stock length is a whole multiple of, so that lengths are counted in small numbers: weighed above the cents
 * of an order they would otherwise be too large for the LP engine's arithmetic.
 */
export function lengthStep(problem: Problem): number {
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
export function combined(problem: Problem, objectives: readonly Counted[], known: Solution): Costs {
  const parts = objectives.map((objective) => ({
    costs: costsOf(problem, objective),
    range: 4 * measure(problem, known, objective) + 1000,
  }))
  const weights = parts.map((_, k) => parts.slice(k + 1).reduce((product, part) => product * part.range, 1))
  return weighed(
    problem,
    parts.map(({ costs }, k) => ({ costs, weight: weights[k] ?? 1 })),
    0,
  )
}

/** The sum of costs, each so many times. */
export function weighed(
  problem: Problem,
  parts: readonly { readonly costs: Costs; readonly weight: number }[],
  constant: number,
): Costs {
  const sum = (pick: (costs: Costs) => number): number =>
    parts.reduce((total, { costs, weight }) => total + weight * pick(costs), 0)
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
    constant,
  }
}
