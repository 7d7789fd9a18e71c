import { convexOverlap } from '../geometry/index.ts'
import { inches } from '../units/index.ts'
import { fromAbove } from './footprint.ts'
import type { PlacedJoist } from './joists.ts'
import type { Beam } from './types.ts'

/** A joist that reaches over a beam by less has no wood for a tie. */
const TOUCHES = inches(1)

/**
 * Whether a joist that hangs from a hip lies on a beam on which it is not reckoned to rest: it is tied down and blocked
 * there too.
 */
export function crossesAtHip({ member, place, supports }: PlacedJoist, { id, line, plies }: Beam): boolean {
  if (place.startsAt?.board !== 'hip' && place.endsAt?.board !== 'hip') return false
  if (supports.some((one) => one.id === id)) return false
  const [from, to] = line
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  const half = (plies * inches(1.5)) / 2
  const side = { x: (-(to.y - from.y) / long) * half, y: ((to.x - from.x) / long) * half }
  const band = [
    { x: from.x + side.x, y: from.y + side.y },
    { x: to.x + side.x, y: to.y + side.y },
    { x: to.x - side.x, y: to.y - side.y },
    { x: from.x - side.x, y: from.y - side.y },
  ]
  return convexOverlap(fromAbove(member), band, TOUCHES)
}
