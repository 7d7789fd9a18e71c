import { fail, ok, type Result } from '../units/index.ts'
import type { LpEngine } from './lp-port.ts'
import { buildProblem } from './model/build-problem.ts'
import { costsInCents } from './model/costs.ts'
import { runCrowded, supplyTooSmall } from './model/infeasible.ts'
import type { Problem } from './model/problem.ts'
import { assemble } from './solve/assemble.ts'
import type { Outcome } from './solve/search.ts'
import { searchArranged } from './solve/search-arranged.ts'
import { DEFAULT_LIMITS, Work } from './solve/work.ts'
import type { CutJob, CutPlan, Infeasible, WorkLimits } from './types.ts'

export interface PlanOptions {
  readonly limits?: Partial<WorkLimits>
  /** bound and best plan so far, in cents with preferences */
  readonly onProgress?: (bound: number, best: number) => void
  /** asked every few milliseconds of work: true stops the search with the best plan so far */
  readonly stop?: () => boolean
  /** a good plan with its bound, without the proof */
  readonly quick?: boolean
}

/**
 * The least-cost way to cut a job: joints of all runs and patterns of all boards chosen together, with a lower
 * bound and its certificate. The same job, engine and limits give the same plan; only `stop` can end it early.
 */
export function planCuts(job: CutJob, engine: LpEngine, options: PlanOptions = {}): Result<CutPlan, Infeasible> {
  const built = buildProblem(job)
  if (!built.ok) return built
  const problem = built.value
  const work = new Work({ ...DEFAULT_LIMITS, ...options.limits }, options.stop ?? (() => false))
  const outcome = searchArranged(problem, costsInCents(problem), engine, work, {
    quick: options.quick ?? false,
    onProgress: options.onProgress ?? (() => undefined),
  })
  if (outcome.best === null) return fail(reason(problem, outcome))
  return ok(
    assemble(problem, outcome.best, outcome.paths, outcome.dual, {
      status: work.stopped() ? 'stopped' : outcome.best.cost <= outcome.bound ? 'proven optimal' : 'feasible',
      bound: outcome.bound,
      why: whyOf(problem, outcome, work, options.quick ?? false),
      searched: outcome.searched,
      work: { columns: work.columns, nodes: work.nodes, patterns: work.patterns, engine: engine.name },
    }),
  )
}

function reason(problem: Problem, outcome: Outcome): Infeasible {
  const { job } = problem
  const longest = Math.max(0, ...job.stock.map(option => option.length))
  const run = problem.runs[outcome.lacking?.runs[0] ?? -1]
  if (run !== undefined) return runCrowded(job, run.group, longest as typeof run.group.length)
  const item = problem.items[outcome.lacking?.items[0] ?? -1]
  const piece = job.pieces.find(candidate => candidate.length === item?.length)
  return supplyTooSmall(job, piece?.mark ?? job.label, piece === undefined ? 'some pieces find no board' : `piece ${piece.mark} finds no board`)
}

function whyOf(problem: Problem, outcome: Outcome, work: Work, quick: boolean): string {
  if (outcome.best !== null && outcome.best.cost <= outcome.bound) {
    return outcome.searched === null
      ? 'No order can cost less: the prices per length prove it.'
      : 'No order can cost less: every way that the prices leave open was searched.'
  }
  if (work.stopped()) return 'Stopped before the search was done; the best plan so far is kept.'
  if (quick) return 'First plan; the proof is not sought yet.'
  return `The work allowed is done; ${problem.job.label} may have a cheaper order within the gap.`
}
