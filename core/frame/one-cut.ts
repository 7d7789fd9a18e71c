import { edgeAt, type StripPart } from '../geometry/index.ts'
import type { ViewEdge, ZoneView } from '../layout/index.ts'
import { inches } from '../units/index.ts'
import type { JoistPlace } from './joist-places.ts'

/** An end beside a corner whose two sides reach so far from one line is still sawn in one: common practice, no source. */
const BLUNT = inches(0.5)

/**
 * Both sides of a joist, its ends along the slanting edges that it meets: where the point of one would lie just past a
 * corner, in the board along the next edge, it is sawn at the same angle a little shorter.
 */
export function oneCut(view: ZoneView, { part, startsAt, endsAt }: JoistPlace, thickness: number): StripPart {
  const { left, right } = part
  const leanOf = (edge: ViewEdge | null) => {
    if (edge === null || !edge.steep) return null
    const { from, to } = edgeAt(view.polygon, view.edges.indexOf(edge))
    return ((to.y - from.y) / (to.x - from.x)) * thickness
  }
  const isBlunt = (lean: number | null, shift: number): lean is number =>
    lean !== null && Math.abs(shift - lean) > 0.5 && Math.abs(shift - lean) < BLUNT
  const [start, end] = [leanOf(startsAt), leanOf(endsAt)]
  const low = isBlunt(start, right.low - left.low) ? Math.max(left.low, right.low - start) : left.low
  const high = isBlunt(end, right.high - left.high) ? Math.min(left.high, right.high - end) : left.high
  return {
    left: { ...left, low, high },
    right: {
      ...right,
      low: isBlunt(start, right.low - left.low) ? low + start : right.low,
      high: isBlunt(end, right.high - left.high) ? high + end : right.high,
    },
  }
}
