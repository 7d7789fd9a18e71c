import { fromAbove, type Member } from '../frame/index.ts'
import { inches } from '../units/index.ts'
import type { PlacedFlight } from './types.ts'

/** A joist whose face lies no farther behind the edge is the one that the flight hangs along. */
const AT_EDGE = inches(0.5)

/** What joists end at along an edge. */
export const RIM = 'rim'

/** The joist right behind the edge, along the head of a flight; none where joists end at a rim there. */
export function headJoist(
  members: readonly Member[],
  { head, down, across, width }: PlacedFlight,
): Member | undefined {
  const middle = width / 2
  return members.find((one) => {
    if (one.role !== 'end joist' && one.role !== 'joist') return false
    const spots = fromAbove(one).map(({ x, y }) => ({
      down: (x - head.x) * down.x + (y - head.y) * down.y,
      across: (x - head.x) * across.x + (y - head.y) * across.y,
    }))
    const acrosses = spots.map((spot) => spot.across)
    return (
      Math.abs(Math.max(...spots.map((spot) => spot.down))) <= AT_EDGE &&
      Math.min(...acrosses) < middle &&
      Math.max(...acrosses) > middle
    )
  })
}
