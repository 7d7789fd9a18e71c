import type { PlanePoint, Polygon } from './types.ts'

/** The narrowest way between two convex shapes that do not meet: from a corner of one to a side of the other. */
export function apart(a: Polygon, b: Polygon): number {
  return Math.min(...a.map((corner) => toSides(corner, b)), ...b.map((corner) => toSides(corner, a)))
}

function toSides({ x, y }: PlanePoint, shape: Polygon): number {
  return Math.min(
    ...shape.map((from, i) => {
      const to = shape[(i + 1) % shape.length] ?? from
      const [dx, dy] = [to.x - from.x, to.y - from.y]
      const square = dx * dx + dy * dy
      const along = square === 0 ? 0 : ((x - from.x) * dx + (y - from.y) * dy) / square
      const share = Math.min(1, Math.max(0, along))
      return Math.hypot(x - from.x - share * dx, y - from.y - share * dy)
    }),
  )
}
