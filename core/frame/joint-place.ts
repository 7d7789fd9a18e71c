import { type Ticks, ticks } from '../units/index.ts'
import { fromAbove } from './footprint.ts'
import type { Member, PlanPoint } from './types.ts'

/**
 * How far a board's own left end, its long point where it is mitred, lies before the start of a middle line.
 * @param line from its left end: the board's own, or that of what it is a ply of
 */
export function leadOf(
  board: Pick<Member, 'plan' | 'box'>,
  [from, to]: readonly [PlanPoint, PlanPoint],
): Ticks {
  const whole = Math.hypot(to.x - from.x, to.y - from.y)
  const reach = fromAbove(board).map(
    ({ x, y }) => ((x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)) / whole,
  )
  return ticks(Math.round(-Math.min(...reach)))
}

/** Where on the plan a joint of a framing member is, on its middle line; joints are measured from its left end. */
export function jointPlace(member: Pick<Member, 'plan' | 'box' | 'line'>, at: number): PlanPoint {
  const { box, line } = member
  if (line === undefined) return { x: box.x0 + at, y: (box.y0 + box.y1) / 2 }
  const [from, to] = line
  const part = (at - leadOf(member, line)) / Math.hypot(to.x - from.x, to.y - from.y)
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }
}
