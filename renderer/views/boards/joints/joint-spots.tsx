import { jointPlace } from '../../../../core/frame/index.ts'
import { type Fit, toX, toY } from '../../../drawing/fit.ts'
import { useJob } from '../../../state/session-context.ts'

/** Radius of the ring round a point that is looked at, px. */
const RING = 9

/** The point of the list that is looked at, ringed on every member of its run. */
export function JointSpots({ fit }: { readonly fit: Fit }) {
  const lit = useJob((state) => state.litPoint)
  const design = useJob((state) => state.design)
  if (lit === null || design === null) return null
  const run = design.takeoff.runs.find(({ id }) => id === lit.runId)
  const members = design.frame.members.filter(({ id }) => run?.memberIds.includes(id))
  return members.map((member) => {
    const { x, y } = jointPlace(member, lit.at)
    return <circle key={member.id} className="joint-spot" cx={toX(fit, x)} cy={toY(fit, y)} r={RING} />
  })
}
