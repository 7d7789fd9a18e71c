import type { PlanePoint, Polygon } from './types.ts'

const LEVEL: PlanePoint = { x: 1, y: 0 }
const UPRIGHT: PlanePoint = { x: 0, y: 1 }

/**
 * Whether two convex shapes lie over each other by more than a slack, in ticks: no line parts them. Where one does, one
 * along an edge does so best; level and upright ones are tried first, for most shapes lie far apart.
 */
export function convexOverlap(a: Polygon, b: Polygon, slack: number): boolean {
  if (partedAlong(a, b, LEVEL, slack) || partedAlong(a, b, UPRIGHT, slack)) return false
  return !partedBy(a, b, slack) && !partedBy(b, a, slack)
}

/** Whether an edge of the first parts the two. */
function partedBy(a: Polygon, b: Polygon, slack: number): boolean {
  return a.some((from, i) => {
    const to = a[(i + 1) % a.length] ?? from
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    if (length === 0) return false
    const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length }
    return partedAlong(a, b, across, slack)
  })
}

/** Whether the two do not reach into each other by more than the slack on their way across. */
function partedAlong(a: Polygon, b: Polygon, across: PlanePoint, slack: number): boolean {
  let [least, most, otherLeast, otherMost] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ]
  for (const { x, y } of a) {
    const reach = x * across.x + y * across.y
    if (reach < least) least = reach
    if (reach > most) most = reach
  }
  for (const { x, y } of b) {
    const reach = x * across.x + y * across.y
    if (reach < otherLeast) otherLeast = reach
    if (reach > otherMost) otherMost = reach
  }
  return otherLeast >= most - slack || otherMost <= least + slack
}
