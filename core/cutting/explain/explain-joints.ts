import { cents, printMoney } from '../../units/index.ts'
import type { LpEngine } from '../lp-port.ts'
import { planCuts } from '../plan-cuts.ts'
import type { CutJob, CutPlan, JointPoint, RunGroup, WorkLimits } from '../types.ts'
import { forceJoint } from './force-joint.ts'
import type { Difference, JointReason, MadeJoint, RefusedJoint, UnusedJoint } from './types.ts'
import { forbidJoint, holdInOnePiece } from './wishes.ts'

export interface ExplainOptions {
  /** only these joints; all where absent */
  readonly only?: (runId: string, at: number) => boolean
  /** points that are no joint points at all, with the rule */
  readonly refused?: readonly Omit<RefusedJoint, 'kind'>[]
  readonly limits?: Partial<WorkLimits>
  /** plans made for other joints of the same job, by content; shared between calls */
  readonly known?: Map<string, Difference | null>
}

/** Nodes for one other way. What is not proven within them is given as a range. */
const NODES = 200

/**
 * Why each joint of a plan is made, and why each that could be is not: the job is planned again without it, or with
 * it, and the difference is what it saves. The same job, plan and limits give the same answer.
 */
export function explainJoints(
  job: CutJob,
  plan: CutPlan,
  engine: LpEngine,
  options: ExplainOptions = {},
): JointReason[] {
  const { only = () => true, refused = [], known = new Map<string, Difference | null>() } = options
  const limits = { nodes: NODES, ...options.limits }
  const differenceOf = (other: CutJob, extra = 0): Difference | null => {
    const key = `${plan.cost} ${extra} ${JSON.stringify([other, limits])}`
    const before = known.get(key)
    if (before !== undefined) return before
    const planned = planCuts(other, engine, { limits })
    const difference = planned.ok ? between(plan, planned.value, extra) : null
    known.set(key, difference)
    return difference
  }
  const reasons = job.runs.flatMap((run) =>
    run.points
      .filter((point) => only(run.id, point.at))
      .map((point): JointReason => {
        const memberIds = plan.joints
          .filter((joint) => joint.runId === run.id && joint.at === point.at)
          .map((joint) => joint.memberId)
        return memberIds.length > 0
          ? made(job, run, point, memberIds, differenceOf)
          : unused(job, run, point, differenceOf)
      }),
  )
  return [
    ...reasons,
    ...refused
      .filter(({ runId, at }) => only(runId, at))
      .map((point): RefusedJoint => ({ ...point, kind: 'refused' })),
  ]
}

function between(plan: CutPlan, other: CutPlan, extra: number): Difference {
  const most = other.cost + extra - plan.cost
  if (other.status === 'proven optimal') return { atLeast: cents(most), most: cents(most) }
  const weighed = other.bound + extra - (plan.cost + plan.preference)
  return { atLeast: cents(Math.min(most, weighed)), most: cents(most) }
}

type DifferenceOf = (other: CutJob, extra?: number) => Difference | null

function made(
  job: CutJob,
  run: RunGroup,
  point: JointPoint,
  memberIds: string[],
  differenceOf: DifferenceOf,
): MadeJoint {
  const withoutIt = differenceOf(forbidJoint(job, run.id, point.at))
  const inOnePiece = differenceOf(holdInOnePiece(job, run.id))
  const whole =
    inOnePiece === null
      ? 'no board makes the run in one piece'
      : `in one piece the order would cost ${more(inOnePiece)}`
  const elsewhere =
    withoutIt === null
      ? 'without a joint here it cannot be made of the boards to be had'
      : `without a joint here the order would cost ${more(withoutIt)}`
  return {
    kind: 'made',
    runId: run.id,
    at: point.at,
    label: point.label,
    memberIds,
    withoutIt,
    inOnePiece,
    message: `Joint ${placeOf(point)} (${run.label}): ${whole}; ${elsewhere}.`,
  }
}

function unused(job: CutJob, run: RunGroup, point: JointPoint, differenceOf: DifferenceOf): UnusedJoint {
  const forced = forceJoint(job, run.id, point.at)
  const withIt = forced === null ? null : differenceOf(forced.job, forced.jointCost)
  const here = `No joint ${placeOf(point)} (${run.label})`
  return {
    kind: 'unused',
    runId: run.id,
    at: point.at,
    label: point.label,
    withIt,
    message:
      withIt !== null
        ? `${here}: it may be jointed there; the order would cost ${more(withIt)}.`
        : run.neighboursApart
          ? `${here}: courses may be jointed there; the plan uses other places.`
          : `${here}: no board to be had makes the pieces that it would need, or a rule on them would be broken.`,
  }
}

/** "at post 2", "between J3 and J4" */
export function placeOf({ label }: Pick<JointPoint, 'label'>): string {
  return label.startsWith('between ') ? label : `at ${label}`
}

function more({ atLeast, most }: Difference): string {
  if (atLeast === 0 && most === 0) return 'the same'
  return atLeast === most ? `${printMoney(most)} more` : `${printMoney(atLeast)} to ${printMoney(most)} more`
}
