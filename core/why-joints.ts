import { explainJoints, type JointReason, type LpEngine, placeOf, type WorkLimits } from './cutting/index.ts'
import type { Estimate } from './estimate-types.ts'
import { bookAsBought, cutJobs, type OffcutsOnHand, type PriceBook } from './pricing/index.ts'
import { refusedPoints } from './refused-points.ts'

export interface WhyJointsOptions {
  /** only these joints; all where absent */
  readonly only?: (runId: string, at: number) => boolean
  readonly rack?: readonly OffcutsOnHand[]
  readonly limits?: Partial<WorkLimits>
}

/**
 * What every joint of an estimate saves, why each other point has none, and the rule where one was refused. Plans
 * the product again for each point asked for: ask for one, or for few.
 */
export function whyJoints(
  estimate: Estimate,
  book: PriceBook,
  engine: LpEngine,
  { rack, ...options }: WhyJointsOptions = {},
): JointReason[] {
  const bought = bookAsBought(book, estimate.split?.from ?? null)
  return cutJobs(estimate, bought, rack).classes.flatMap(({ cutJob }) => {
    const planned = estimate.plans.find(({ plan }) => plan.jobId === cutJob.id)
    if (planned === undefined) return []
    const inIt = new Set(cutJob.runs.map((run) => run.id))
    const refused = estimate.takeoff.runs.flatMap((run) =>
      inIt.has(run.id)
        ? refusedPoints(run, estimate.job).map(({ at, label, why }) => ({
            runId: run.id,
            at,
            label,
            message: `No joint ${placeOf({ label })} (${run.label}): ${why}`,
          }))
        : [],
    )
    return explainJoints(cutJob, planned.plan, engine, { ...options, refused })
  })
}

/** What the joints of framing save, each run in few words; decking is jointed at nearly every joist and left out. */
export function framingJoints(estimate: Estimate, book: PriceBook, engine: LpEngine): JointReason[] {
  const framing = new Set(estimate.takeoff.runs.filter((run) => run.kind !== 'decking').map((run) => run.id))
  const made = new Set(
    estimate.plans.flatMap(({ plan }) => plan.joints.map((joint) => `${joint.runId} ${joint.at}`)),
  )
  return whyJoints(estimate, book, engine, {
    only: (runId, at) => framing.has(runId) && made.has(`${runId} ${at}`),
  })
}
