import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Pattern, Problem } from '../model/problem.ts'
import { programOf, withCeiling } from './program.ts'
import { rounded } from './rounded.ts'
import type { Solution } from './solution.ts'
import type { Work } from './work.ts'

export interface IntegerQuestion {
  readonly patterns: readonly Pattern[]
  /** only plans cheaper than this are of interest */
  readonly below: number
  /** a plan this cheap ends the search */
  readonly enough: number
  readonly nodes: number
  /** boards of each stock type, where they are given */
  readonly boards?: readonly number[]
  /** arcs that may be used; all where absent */
  readonly arcs?: (run: number, arc: number) => boolean
}

export interface IntegerAnswer {
  readonly solution: Solution | null
  /** true: no plan from these patterns is cheaper than `solution`, or than `below` where there is none */
  readonly proven: boolean
}

/** The best plan made of the given patterns, by the engine's branch and bound; costs are whole, so a gap under 1 is none. */
export function bestOf(
  problem: Problem,
  costs: Costs,
  engine: LpEngine,
  question: IntegerQuestion,
  work: Work,
): IntegerAnswer {
  const plain = programOf(problem, costs, question)
  const limited = question.below < Number.POSITIVE_INFINITY
  const program = limited
    ? withCeiling(problem, costs, plain, question.below - 1 - costs.constant + 1e-4)
    : plain
  const answer = engine.solveInteger({
    rows: program.rows,
    columns: program.lp,
    maxNodes: question.nodes,
    target: question.enough + 1e-4 - costs.constant,
    gap: 0.99,
    seek: problem.runs.length === 0,
    stop: () => work.stopped(),
  })
  work.nodes += 1
  const solution = answer.x.length === 0 ? null : rounded(problem, costs, program.columns, answer.x)
  if (answer.x.length > 0 && solution === null) return { solution: null, proven: false }
  return { solution, proven: answer.status === 'optimal' || answer.status === 'infeasible' }
}
