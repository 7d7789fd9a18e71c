import type { Polygon } from './types.ts'

/** Whether two convex shapes lie over each other by more than a slack, in ticks: no line parts them. */
export function convexOverlap(a: Polygon, b: Polygon, slack: number): boolean {
  return !partedBy(a, b, slack) && !partedBy(b, a, slack)
}

/** Whether an edge of the first parts the two. */
function partedBy(a: Polygon, b: Polygon, slack: number): boolean {
  return a.some((from, i) => {
    const to = a[(i + 1) % a.length] ?? from
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    if (length === 0) return false
    const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length }
    const reach = (shape: Polygon) => shape.map(({ x, y }) => x * across.x + y * across.y)
    const [mine, other] = [reach(a), reach(b)]
    return Math.min(...other) >= Math.max(...mine) - slack || Math.max(...other) <= Math.min(...mine) + slack
  })
}
