import type { DualBound } from '../bound/dual-bound.ts'
import type { KnapsackTable } from '../bound/knapsack-table.ts'
import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { branch } from './branch.ts'
import { arcsWithin, patternsWithin } from './enumerate.ts'
import { bestOf } from './integer.ts'
import type { Solution } from './solution.ts'
import type { Work } from './work.ts'

/** First step above the bound, as a share of it, and how much wider each further step is. */
const FIRST_STEP = 0.001
const WIDENING = 2.5
/** Nodes of the own branch and bound before the engine's integer solver is asked, where the program is small. */
const BRANCHES = 300
const SMALL_ROWS = 45

export interface Deepened {
  readonly best: Solution
  readonly bound: number
}

/**
 * Is there a plan within a few cents of the bound? If not, the bound rises by those cents and the question is asked
 * of a wider band, until a plan is found or the band reaches the best one known. Each question is about few patterns:
 * a plan of cost c uses none whose reduced cost is over c less the bound.
 */
export function deepen(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  table: KnapsackTable,
  dual: DualBound,
  start: Solution,
  work: Work,
  raised: (bound: number) => void,
): Deepened {
  let best = start
  let bound = dual.cents
  for (let step = Math.max(1, Math.round(bound * FIRST_STEP)); bound < best.cost; step = Math.ceil(step * WIDENING)) {
    const below = Math.min(best.cost, dual.cents + step)
    const within = patternsWithin(problem, costs, table, dual, below, work.limits.patterns)
    if (within === null || work.stopped()) break
    work.patterns += within.length
    const kept = arcsWithin(problem, costs, dual, below)
    const question = {
      patterns: within,
      enough: bound,
      below,
      arcs: (run: number, arc: number): boolean => kept[run]?.[arc] === true,
    }
    const rows = problem.items.length + problem.runs.reduce((sum, run) => sum + run.nodes, 0)
    let answer = rows > SMALL_ROWS ? null : branch(problem, costs, engine, { ...question, nodes: BRANCHES }, work)
    if (answer === null || (!answer.proven && !work.stopped())) {
      const limit = answer?.solution?.cost ?? below
      if (answer?.solution != null) best = answer.solution
      answer = bestOf(problem, costs, engine, { ...question, below: limit, nodes: work.limits.nodes }, work)
    }
    if (answer.solution !== null) best = answer.solution
    if (!answer.proven) break
    bound = Math.min(best.cost, Math.max(bound, answer.solution?.cost ?? below))
    raised(bound)
  }
  return { best, bound }
}
