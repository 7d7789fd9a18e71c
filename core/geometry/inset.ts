import { edgeAt, meeting, movedLeft } from './lines.ts'
import type { PlanePoint, Polygon } from './types.ts'

/** A polygon with every edge moved inward by a width of its own. */
export interface Inset {
  readonly polygon: Polygon
  /** for each edge of it, the edge of the polygon that it was; the step between two edges of one line is neither */
  readonly edgeOf: readonly (number | null)[]
}

/** Moves edge i inward by widths[i]; a negative width moves it outward. The polygon's area is positive. */
export function insetBy(polygon: Polygon, widths: readonly number[]): Inset {
  const moved = polygon.map((_, i) => movedLeft(edgeAt(polygon, i), widths[i] ?? 0))
  const points: PlanePoint[] = []
  const edgeOf: (number | null)[] = []
  for (const [i, edge] of moved.entries()) {
    const before = moved[(i + moved.length - 1) % moved.length] ?? edge
    const corner = meeting(before, edge)
    if (corner === null && (before.to.x !== edge.from.x || before.to.y !== edge.from.y)) {
      points.push(before.to)
      edgeOf.push(null)
      points.push(edge.from)
    } else points.push(corner ?? edge.from)
    edgeOf.push(i)
  }
  return { polygon: points, edgeOf }
}
