import type { Estimate, Planned } from '../../core/estimate-types.ts'
import type { FrameRun } from '../../core/frame/index.ts'
import { refusedPoints } from '../../core/refused-points.ts'

/** One bearing or bay of a run: jointed there, or free to be, or not allowed to. */
export interface JointPointLine {
  readonly at: number
  readonly label: string
  readonly state: 'made' | 'free' | 'refused'
  /** members jointed there */
  readonly memberIds: readonly string[]
  /** the rule, where it is refused */
  readonly why: string
}

/** Every point of a run from its left end. */
export function pointsOf(run: FrameRun, { plan }: Planned, { job }: Estimate): readonly JointPointLine[] {
  const refused = refusedPoints(run, job)
  const barred = new Set(refused.map(({ at }) => at))
  const allowed = run.points
    .filter(({ at }) => !barred.has(at))
    .map(({ at, label }): JointPointLine => {
      const memberIds = plan.joints
        .filter((joint) => joint.runId === run.id && joint.at === at)
        .map((joint) => joint.memberId)
      return { at, label, state: memberIds.length > 0 ? 'made' : 'free', memberIds, why: '' }
    })
  return [
    ...allowed,
    ...refused.map(({ at, label, why }) => ({ at, label, state: 'refused' as const, memberIds: [], why })),
  ].sort((a, b) => a.at - b.at)
}

/** The runs that are cut by a plan, in the order of the deck. */
export function runsOf({ takeoff }: Estimate, { product }: Planned): readonly FrameRun[] {
  return takeoff.runs.filter(
    (run) =>
      run.product.size === product.size &&
      run.product.species === product.species &&
      run.product.grade === product.grade &&
      run.product.treatment === product.treatment,
  )
}
