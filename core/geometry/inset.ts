import { turn } from './crossing.ts'
import { edgeAt, meeting, movedLeft } from './lines.ts'
import type { PlanePoint, Polygon, Segment } from './types.ts'

/** A polygon with every edge moved inward by a width of its own. */
export interface Inset {
  readonly polygon: Polygon
  /** for each edge of it, the edge of the polygon that it was; the step between two edges of one line is neither */
  readonly edgeOf: readonly (number | null)[]
}

/**
 * Moves edge i inward by widths[i]; a negative width moves it outward. The polygon's area is positive.
 * @param isMitred whether, at the corner where edge i begins, a band ends on the line that halves the corner's angle
 * though the other edge has no width
 */
export function insetBy(
  polygon: Polygon,
  widths: readonly number[],
  isMitred: (i: number) => boolean = () => false,
): Inset {
  const moved = polygon.map((_, i) => movedLeft(edgeAt(polygon, i), widths[i] ?? 0))
  const points: PlanePoint[] = []
  const edgeOf: (number | null)[] = []
  for (const [i, edge] of moved.entries()) {
    const before = moved[(i + moved.length - 1) % moved.length] ?? edge
    const passed = isMitred(i) ? mitreAt(polygon, i, widths) : cornersBetween(polygon, i, before, edge)
    points.push(...passed)
    // the ways between the corners that are passed lie on neither edge
    edgeOf.push(...passed.slice(1).map(() => null), i)
  }
  return { polygon: points, edgeOf }
}

/** From the band's inner corner out to the corner itself, or back. */
function mitreAt(polygon: Polygon, i: number, widths: readonly number[]): Polygon {
  const before = edgeAt(polygon, i - 1)
  const after = edgeAt(polygon, i)
  const first = widths[(i + polygon.length - 1) % polygon.length] ?? 0
  const width = Math.max(first, widths[i] ?? 0)
  const inner = meeting(movedLeft(before, width), movedLeft(after, width)) ?? after.from
  return first > 0 ? [inner, after.from] : [after.from, inner]
}

/** Corners of the inset where edge i begins. */
function cornersBetween(polygon: Polygon, i: number, before: Segment, edge: Segment): Polygon {
  const corner = meeting(before, edge)
  const step = before.to.x !== edge.from.x || before.to.y !== edge.from.y
  if (corner === null) return step ? [before.to, edge.from] : [edge.from]
  const outer = edgeAt(polygon, i)
  const reflex = turn(edgeAt(polygon, i - 1).from, outer.from, outer.to) < 0
  if (!reflex) return [corner]
  // bands of unlike width end square at a corner that reaches in: none may run through the end of the other
  const short = ahead(before, before.to, corner) < -SLACK
  const late = ahead(edge, edge.from, corner) > SLACK
  // both moved outward: their lines meet before either ends
  if (short && late) return [corner]
  const ends = { near: outer.from, before: before.to, after: edge.from }
  if (short) return squareEnd(before.to, edge, ends, (passed) => [before.to, passed]) ?? [corner]
  if (late) return squareEnd(edge.from, before, ends, (passed) => [passed, edge.from]) ?? [corner]
  return [corner]
}

/** A square end that runs on for more than so many widths is none: it lies nearly along the other edge. */
const MOST_WIDTHS = 2

/** Corners where a band ends square against the other edge; null where they do not meet near the corner. */
function squareEnd(
  end: PlanePoint,
  other: Segment,
  {
    near,
    before,
    after,
  }: { readonly near: PlanePoint; readonly before: PlanePoint; readonly after: PlanePoint },
  asPassed: (passed: PlanePoint) => Polygon,
): Polygon | null {
  const passed = meeting({ from: near, to: end }, other)
  const off = ({ x, y }: PlanePoint) => Math.hypot(x - near.x, y - near.y)
  if (passed === null || off(passed) > MOST_WIDTHS * Math.max(off(before), off(after))) return null
  return asPassed(passed)
}

/** A thousandth of a tick is rounding. */
const SLACK = 1e-3

/** How far b lies past a on the way of a segment. */
function ahead({ from, to }: Segment, a: PlanePoint, b: PlanePoint): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  return ((b.x - a.x) * (to.x - from.x) + (b.y - a.y) * (to.y - from.y)) / length
}
