import type { Cents } from '../units/index.ts'
import { cents } from '../units/index.ts'
import type { LpEngine } from './lp-port.ts'
import { longPoints } from './mitres/measure.ts'
import { nestingOf } from './mitres/nesting.ts'
import { buildProblem } from './model/build-problem.ts'
import { costsInCents } from './model/costs.ts'
import { generate, tableFor } from './solve/generate.ts'
import { Master } from './solve/master.ts'
import { firstPatterns } from './solve/pool.ts'
import { startingPlans } from './solve/start.ts'
import { DEFAULT_LIMITS, Work } from './solve/work.ts'
import type { CutJob } from './types.ts'

/** Rounds of random fillings for the first columns: the masters of a deck are small. */
const ROUNDS = 1

/**
 * Cents of boards and joints below which no plan of a job lies, preferences left out: the bound of the relaxation alone,
 * at a fraction of the work of a plan. Null where some piece or run fits no stock, so that there is no plan at all.
 */
export function leastPlanCost(job: CutJob, engine: LpEngine): Cents | null {
  const { relaxed } = nestingOf(moneyAlone(job)) ?? { relaxed: longPoints(job) }
  // as if no slanting end stayed alone: a lower bound still, and twenty times as quick on decking at an angle
  const built = buildProblem(moneyAlone(job), { ...relaxed, kindOf: () => '', mix: null })
  if (!built.ok) return null
  const problem = built.value
  if (problem.items.length === 0) return cents(0)
  const costs = costsInCents(problem)
  const table = tableFor(problem)
  const plans = startingPlans(problem, costs)
  const best = Math.min(Number.POSITIVE_INFINITY, ...plans.map(({ cost }) => cost))
  const master = new Master(problem, costs, engine, firstPatterns(problem, plans, table, ROUNDS))
  try {
    const work = new Work(DEFAULT_LIMITS, () => false)
    return cents(Math.max(0, generate(master, table, best, work).bound.cents))
  } finally {
    master.dispose()
  }
}

/** The job without what only steers: handling, kept offcuts, priced caps. Every plan of the job is a plan of it, at the same money. */
function moneyAlone(job: CutJob): CutJob {
  return {
    ...job,
    handling: cents(0),
    perCut: cents(0),
    keep: null,
    runs: job.runs.map((run) => ({
      ...run,
      points: run.points.map((point) =>
        point.excess === null ? point : { ...point, cap: null, excess: null },
      ),
    })),
  }
}
