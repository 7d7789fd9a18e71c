import { type Fit, toX, toY } from '../../drawing/fit.ts'
import type { Grip } from '../../state/grips/index.ts'
import { movedLine } from '../../state/grips/snap.ts'
import { useJob } from '../../state/session-context.ts'

/** Radius of the ring round a chosen corner or post, px. */
const RING = 12

/** The chosen edge, beam, corner or post, at the place that it is moved to, ahead of the deck that follows. */
export function GripLine({ fit, grip }: { readonly fit: Fit; readonly grip: Grip | null }) {
  const held = useJob((state) => state.held)
  const shown = held?.grip ?? grip
  if (shown === null) return null
  const [from, to] = held === null ? shown.line : movedLine(held.grip, held.values)
  const [x1, y1, x2, y2] = [toX(fit, from.x), toY(fit, from.y), toX(fit, to.x), toY(fit, to.y)]
  if (x1 === x2 && y1 === y2) return <circle className="grip-mark" cx={x1} cy={y1} r={RING} />
  return <line className="grip-mark" x1={x1} y1={y1} x2={x2} y2={y2} />
}
