import { fail, ok, type Result } from '../units/index.ts'
import { aimWords } from './aim-words.ts'
import type { LpEngine } from './lp-port.ts'
import { fitsItsBoards } from './mitres/fits.ts'
import { longPoints, type Measure } from './mitres/measure.ts'
import { nestingOf } from './mitres/nesting.ts'
import { planNested } from './mitres/plan-nested.ts'
import { buildProblem } from './model/build-problem.ts'
import { costsInCents } from './model/costs.ts'
import type { Problem } from './model/problem.ts'
import { sayingWhatRunsWild } from './run-wild.ts'
import { assemble } from './solve/assemble.ts'
import { lengthStep, measure } from './solve/objectives.ts'
import { type Ranked, type Reached, rank, reachedAtOnce } from './solve/rank.ts'
import { reasonFor } from './solve/reason.ts'
import { fits, type SearchOptions } from './solve/search.ts'
import { judge, type RuledOutcome } from './solve/search-rules.ts'
import type { Solution } from './solve/solution.ts'
import { type CellMeter, DEFAULT_LIMITS, Work } from './solve/work.ts'
import { byPlace } from './tidy/by-place.ts'
import { fewerJoints } from './tidy/fewer-joints.ts'
import { fewerSetUps } from './tidy/fewer-set-ups.ts'
import type { CutJob, CutPlan, Infeasible, WorkLimits } from './types.ts'

export interface PlanOptions {
  readonly limits?: Partial<WorkLimits> | undefined
  /** bound and best plan so far, in cents with preferences */
  readonly onProgress?: ((bound: number, best: number) => void) | undefined
  /** told of each plan better than those before: what is kept of a search that has to be ended at once */
  readonly onPlan?: ((plan: CutPlan) => void) | undefined
  /** asked every few milliseconds of work: true stops the search with the best plan so far */
  readonly stop?: (() => boolean) | undefined
  /** what ends the search where more cells of tables are to be gone through than are left; without it none does */
  readonly cells?: CellMeter | undefined
  /** a good plan with its bound, without the proof */
  readonly quick?: boolean | undefined
  /** false: of plans that cost the same the first that is found, whatever its joints and set-ups */
  readonly tidy?: boolean | undefined
}

const PROVEN = 'No order can cost less: the prices per length prove it.'
const STOPPED = 'Stopped before the search was done; the best plan so far is kept.'

/**
 * The least-cost way to cut a job: joints of all runs and patterns of all boards chosen together, with a lower
 * bound and its certificate. The same job, engine and limits give the same plan; only `stop` can end it early.
 */
export function planCuts(
  job: CutJob,
  engine: LpEngine,
  options: PlanOptions = {},
): Result<CutPlan, Infeasible> {
  const nesting = nestingOf(job)
  if (nesting === null) return planBy(job, longPoints(job), engine, options)
  // the first search is told of, as far as its plans fit their boards; those after it may be poorer
  const { onPlan, onProgress, ...quietly } = options
  const told = onPlan && ((plan: CutPlan) => (fitsItsBoards(job, plan) ? onPlan(plan) : undefined))
  const planned = planNested(job, nesting, (measure) =>
    planBy(
      job,
      measure,
      engine,
      measure === nesting.relaxed ? { ...quietly, onProgress, onPlan: told } : quietly,
    ),
  )
  if (planned.ok) onPlan?.(planned.value)
  return planned
}

function planBy(
  job: CutJob,
  measure: Measure,
  engine: LpEngine,
  options: PlanOptions,
): Result<CutPlan, Infeasible> {
  const built = buildProblem(job, measure)
  if (!built.ok) return built
  const problem = built.value
  const { stop = () => false, cells } = options
  const work = new Work({ ...DEFAULT_LIMITS, ...options.limits }, stop, cells)
  const quick = options.quick ?? false
  const ranked = rank(problem, costsInCents(problem), engine, work, {
    quick,
    onProgress: options.onProgress ?? (() => undefined),
    onBest: options.onPlan && telling(problem, work, engine, options.onPlan),
  })
  const { least, chosen } = ranked
  if (chosen.best === null) return fail(reasonFor(problem, chosen))
  const asFound = quick || options.tidy === false || work.stopped()
  const { best, paths } = asFound ? chosen : tidied(problem, chosen, engine, work)
  if (best === null) return fail(reasonFor(problem, chosen))
  const proven = best.cost <= least.bound
  const plan = assemble(problem, best, paths, least.dual, {
    status: proven ? 'proven optimal' : work.stopped() ? 'stopped' : 'feasible',
    bound: least.bound,
    why: whyOf(problem, ranked, proven, work, quick),
    searched: least.searched,
    work: { columns: work.columns, nodes: work.nodes, patterns: work.patterns, engine: engine.name },
  })
  return ok(finished(job, withAims(problem, plan, measured(problem, best, ranked.reached))))
}

function finished(job: CutJob, plan: CutPlan): CutPlan {
  return sayingWhatRunsWild(job, byPlace(job, plan))
}

/** Tells of plans that keep all rules and are no worse than those told before, as they would be if the search ended there. */
function telling(
  problem: Problem,
  work: Work,
  engine: LpEngine,
  tell: (plan: CutPlan) => void,
): NonNullable<SearchOptions['onBest']> {
  let told = Number.POSITIVE_INFINITY
  return (best, dual, least) => {
    // where a rule parts the search, each part begins with poorer plans again
    if (best.cost > told) return
    const judged = judge(problem, best, problem.job.maxLengths ?? Number.POSITIVE_INFINITY)
    if (!('paths' in judged)) return
    told = best.cost
    const bound = Math.max(least, dual.cents)
    const proven = best.cost <= bound
    const plan = assemble(problem, best, judged.paths, dual, {
      status: proven ? 'proven optimal' : 'stopped',
      bound,
      why: proven ? PROVEN : STOPPED,
      searched: bound > dual.cents ? { nodes: work.nodes, patterns: work.patterns } : null,
      work: { columns: work.columns, nodes: work.nodes, patterns: work.patterns, engine: engine.name },
    })
    tell(finished(problem.job, withAims(problem, plan, reachedAtOnce(problem, best, bound))))
  }
}

/** Among plans as good: fewer joints, then fewer set-ups, then longer offcuts in fewer boards. */
function tidied(problem: Problem, chosen: RuledOutcome, engine: LpEngine, work: Work): RuledOutcome {
  const jointed = fewerJoints(problem, chosen, engine, () => work.stopped())
  const { best } = jointed
  if (best === null) return jointed
  const tidier = fewerSetUps(problem, costsInCents(problem), best)
  return fits(problem, tidier.boards) ? { ...jointed, best: tidier } : jointed
}

/** What the plan that is given out has of each objective: a tidier one may have come out cheaper where the cost is not proven. */
function measured(problem: Problem, best: Solution, reached: readonly Reached[]): readonly Reached[] {
  return reached.map((each) => ({ ...each, value: measure(problem, best, each.objective) }))
}

/** The plan with what it was chosen for. The search counts lengths of board in what all of them are multiples of. */
function withAims(problem: Problem, plan: CutPlan, reached: readonly Reached[]): CutPlan {
  if (reached.length === 0) return plan
  const step = lengthStep(problem)
  const aims = reached.map(({ objective, value, bound }) => {
    const unit = objective === 'least waste' ? step : 1
    return { objective, value: value * unit, bound: bound * unit }
  })
  return { ...plan, aims, why: `${aimWords(aims)} ${plan.why}` }
}

function whyOf(problem: Problem, ranked: Ranked, proven: boolean, work: Work, quick: boolean): string {
  if (proven) {
    return ranked.least.searched === null
      ? PROVEN
      : 'No order can cost less: every way that the prices leave open was searched.'
  }
  if (work.stopped()) return STOPPED
  if (quick) return 'First plan; the proof is not sought yet.'
  const [first] = problem.job.objectives
  if (first !== undefined && first !== 'least cost') {
    return 'The gap is what that costs above the least.'
  }
  return `The work allowed is done; ${problem.job.label} may have a cheaper order within the gap.`
}
