import { auditRuns } from '../audit/audit-runs.ts'
import type { CutJob, CutPlan, PlannedJoint, RunGroup, RunPiece } from '../types.ts'
import { orderApart } from './order-apart.ts'

/** The runs of the whole job as they come out, or the runs in which sawn and new pieces do not go together. */
export type WholeRuns =
  | {
      readonly kind: 'sound'
      readonly joints: readonly PlannedJoint[]
      readonly memberOrder: CutPlan['memberOrder']
    }
  | { readonly kind: 'at odds'; readonly runs: readonly string[] }

/** Joints of members from their pieces: where one ends and the next begins. */
export function jointsOf(job: CutJob, runPieces: readonly RunPiece[]): PlannedJoint[] {
  return job.runs.flatMap((run) =>
    run.members.flatMap((member) =>
      runPieces
        .filter((piece) => piece.runId === run.id && piece.memberId === member.id && piece.from > 0)
        .sort((a, b) => a.from - b.from)
        .flatMap((piece) => {
          const point = run.points.find((candidate) => candidate.at === piece.from)
          if (point === undefined) return []
          return [{ runId: run.id, memberId: member.id, at: point.at, label: point.label, cost: point.cost }]
        }),
    ),
  )
}

/**
 * Puts sawn and new pieces of all runs together and has each run audited by its own rules.
 * @param orders orders of members already known, by run
 */
export function wholeRuns(
  job: CutJob,
  plan: CutPlan,
  runPieces: readonly RunPiece[],
  orders: ReadonlyMap<string, readonly string[]>,
): WholeRuns {
  const joints = jointsOf(job, runPieces)
  const memberOrder: { runId: string; memberIds: readonly string[] }[] = []
  const odd: string[] = []
  for (const run of job.runs) {
    const order = run.neighboursApart ? (orders.get(run.id) ?? orderOf(run, joints)) : null
    if (run.neighboursApart && order === null) {
      odd.push(run.id)
      continue
    }
    if (order !== null) memberOrder.push({ runId: run.id, memberIds: order })
    const pieces = runPieces.filter((piece) => piece.runId === run.id)
    const own = {
      ...plan,
      runPieces: pieces,
      joints: joints.filter((joint) => joint.runId === run.id),
      memberOrder,
    }
    if (auditRuns({ ...job, runs: [run] }, own).length > 0) odd.push(run.id)
  }
  return odd.length > 0 ? { kind: 'at odds', runs: odd } : { kind: 'sound', joints, memberOrder }
}

function orderOf(run: RunGroup, joints: readonly PlannedJoint[]): string[] | null {
  return orderApart(
    run.members.map(({ id }) => ({
      id,
      joints: joints
        .filter((joint) => joint.runId === run.id && joint.memberId === id)
        .map((joint) => joint.at),
    })),
  )
}

/** What members jointed at one point beyond its preferred cap weigh, in cents. */
export function staggerExcess(
  runs: readonly RunGroup[],
  joints: readonly { readonly runId: string; readonly at: number }[],
): number {
  let total = 0
  for (const run of runs) {
    for (const point of run.points) {
      if (point.cap === null || point.excess === null) continue
      const count = joints.filter((joint) => joint.runId === run.id && joint.at === point.at).length
      total += point.excess * Math.max(0, count - point.cap)
    }
  }
  return total
}
