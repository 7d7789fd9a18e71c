import { cornersOf, fromAbove, type Member } from '../frame/index.ts'
import { convexOverlap } from '../geometry/index.ts'
import type { Spot } from '../stairs/index.ts'

/** Ids of the joists and blocks under a border's inner edge in which a post would stand. */
export function underBorderAt(members: readonly Member[], { x, y }: Spot, half: number): readonly string[] {
  const post = cornersOf({ x0: x - half, x1: x + half, y0: y - half, y1: y + half })
  return members
    .filter(
      ({ role, cause }) => (role === 'joist' || role === 'blocking') && cause.fields[0] === 'decking.border',
    )
    .filter((member) => convexOverlap(fromAbove(member), post, 1))
    .map(({ id }) => id)
}
