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
  const here = `Joint at ${point.label} (${run.label})`
  const first =
    withoutIt === null
      ? `${here}: without it the run cannot be made from the boards to be had`
      : `${here}: saves ${range(withoutIt)} against the best order without it`
  const second =
    inOnePiece === null
      ? 'no board makes the run in one piece'
      : `in one piece the order would cost ${range(inOnePiece)} more`
  return {
    kind: 'made',
    runId: run.id,
    at: point.at,
    label: point.label,
    memberIds,
    withoutIt,
    inOnePiece,
    message: `${first}; ${second}.`,
  }
}

function unused(job: CutJob, run: RunGroup, point: JointPoint, differenceOf: DifferenceOf): UnusedJoint {
  const forced = forceJoint(job, run.id, point.at)
  const withIt = forced === null ? null : differenceOf(forced.job, forced.jointCost)
  const here = `No joint at ${point.label} (${run.label})`
  return {
    kind: 'unused',
    runId: run.id,
    at: point.at,
    label: point.label,
    withIt,
    message:
      withIt !== null
        ? `${here}: it may be jointed there, for ${range(withIt)} more.`
        : run.neighboursApart
          ? `${here}: courses may be jointed there; the plan gains nothing by it.`
          : `${here}: no board to be had makes the pieces that it would need, or a rule on them would be broken.`,
  }
}

function range({ atLeast, most }: Difference): string {
  if (most === 0 && atLeast === 0) return 'nothing'
  return atLeast === most ? printMoney(most) : `${printMoney(atLeast)} to ${printMoney(most)}`
}
