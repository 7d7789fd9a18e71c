import type { Design } from '../../estimate-types.ts'
import { spotAt } from '../../stairs/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { seenFromAbove } from './shapes.ts'

/** The line of the rails stands so far inside the edge, on the posts' centres. */
const INSIDE = inches(3.25)

/** The guard from above: its posts, and the rails between them as a line. */
export function planGuard({ guard }: Design): readonly Primitive[] {
  if (guard === null) return []
  const ids = new Set(guard.stretches.flatMap(({ posts }) => posts.map(({ id }) => id)))
  return [
    ...guard.stretches.map(({ edge, from, to, number }): Primitive => {
      const start = spotAt(edge, from, -INSIDE)
      const end = spotAt(edge, to, -INSIDE)
      return {
        kind: 'line',
        id: `guard-cap-${number}-1`,
        layer: 'guard',
        x1: start.x,
        y1: start.y,
        x2: end.x,
        y2: end.y,
        weight: 'medium',
        stroke: 'solid',
      }
    }),
    ...guard.members
      .filter(({ id }) => ids.has(id))
      .map(({ id, box }) =>
        seenFromAbove(id, box, { layer: 'guard', weight: 'medium', stroke: 'solid', fill: 'wood' }),
      ),
  ]
}
