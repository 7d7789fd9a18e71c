import { edgeAt, meeting, movedLeft } from './lines.ts'
import type { PlanePoint, Polygon, Segment } from './types.ts'

/**
 * How a board along an edge ends at a corner: it covers the neighbour's end and reaches the neighbour's outer line, it
 * butts against a neighbour of some width, it is mitred with it, or it is cut square at the corner.
 */
export type BandEnd =
  | { readonly kind: 'covers' | 'mitred' | 'square' }
  | { readonly kind: 'butts'; readonly width: number }

/** A board along an edge, seen from above: its outer face from start to end, then its inner face back. */
export type Band = readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint]

/** The board along edge i between two distances inside it. The polygon's area is positive. */
export function bandAlong(
  polygon: Polygon,
  index: number,
  [outer, inner]: readonly [number, number],
  [start, end]: readonly [BandEnd, BandEnd],
): Band {
  const edge = edgeAt(polygon, index)
  const at = (depth: number, first: boolean): PlanePoint => {
    const line = movedLeft(edge, depth)
    const how = first ? start : end
    const neighbour = edgeAt(polygon, first ? index - 1 : index + 1)
    const corner = first ? line.from : line.to
    return meeting(line, cutLine(edge, neighbour, how, depth, first)) ?? corner
  }
  return [at(outer, true), at(outer, false), at(inner, false), at(inner, true)]
}

function cutLine(edge: Segment, neighbour: Segment, how: BandEnd, depth: number, first: boolean): Segment {
  switch (how.kind) {
    case 'covers':
      return neighbour
    case 'butts':
      return movedLeft(neighbour, how.width)
    case 'mitred':
      return movedLeft(neighbour, depth)
    case 'square': {
      const corner = first ? edge.from : edge.to
      const across = { x: -(edge.to.y - edge.from.y), y: edge.to.x - edge.from.x }
      return { from: corner, to: { x: corner.x + across.x, y: corner.y + across.y } }
    }
  }
}
