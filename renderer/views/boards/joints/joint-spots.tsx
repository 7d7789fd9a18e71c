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
  return members.map(({ id, box }) => (
    <circle
      key={id}
      className="joint-spot"
      cx={toX(fit, box.x0 + lit.at)}
      cy={toY(fit, (box.y0 + box.y1) / 2)}
      r={RING}
    />
  ))
}
