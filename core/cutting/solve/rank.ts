import type { LpEngine } from '../lp-port.ts'
import type { Costs } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import type { Objective } from '../types.ts'
import { combined, measure } from './objectives.ts'
import type { SearchOptions } from './search.ts'
import { type RuledOutcome, searchRules } from './search-rules.ts'
import { solutionOf } from './solution.ts'
import type { Work } from './work.ts'

export interface Ranked {
  /** least cost, its bound and proof */
  readonly least: RuledOutcome
  /** the plan that the objectives choose, costed in cents */
  readonly chosen: RuledOutcome
}

/** Finds the plan that is best by the job's objectives in their order, and the least cost beside it. */
export function rank(
  problem: Problem,
  cents: Costs,
  engine: LpEngine,
  work: Work,
  options: SearchOptions,
): Ranked {
  const limit = problem.job.maxLengths ?? Number.POSITIVE_INFINITY
  const least = searchRules(problem, cents, engine, work, options, limit)
  const objectives: readonly Objective[] =
    problem.job.objectives.length === 0 ? ['least cost'] : problem.job.objectives
  if (least.best === null || (objectives.length === 1 && objectives[0] === 'least cost'))
    return { least, chosen: least }
  const known = least.best
  const others = objectives.filter((objective) => objective !== 'fewest lengths')
  const wanted: Objective[] = others.includes('least cost') ? others : [...others, 'least cost']
  const costs = combined(problem, wanted, known)
  const silent = { ...options, onProgress: () => undefined, onBest: undefined }
  const solve = (lengths: number): RuledOutcome =>
    inCents(problem, cents, searchRules(problem, costs, engine, work, silent, lengths))
  const place = objectives.indexOf('fewest lengths')
  if (place < 0) return { least, chosen: better(solve(limit), least) }
  const before = objectives.slice(0, place)
  const free = before.length === 0 ? null : solve(limit)
  const most = Math.min(limit, problem.stocks.length)
  for (let lengths = 0; lengths <= most; lengths++) {
    const outcome = solve(lengths)
    if (outcome.best === null) continue
    const plan = outcome.best
    const reference = free?.best ?? null
    const equal =
      reference === null ||
      before.every((objective) => measure(problem, plan, objective) <= measure(problem, reference, objective))
    if (equal) return { least, chosen: outcome }
  }
  return { least, chosen: better(free ?? least, least) }
}

function better(outcome: RuledOutcome, fallback: RuledOutcome): RuledOutcome {
  return outcome.best === null ? fallback : outcome
}

function inCents(problem: Problem, cents: Costs, outcome: RuledOutcome): RuledOutcome {
  if (outcome.best === null) return outcome
  return { ...outcome, best: solutionOf(problem, cents, outcome.best.boards, outcome.best.flows) }
}
