import type { Design } from '../../estimate-types.ts'
import type { Beam } from '../../frame/index.ts'
import { edgeAt, lengthOf, movedLeft } from '../../geometry/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { levelDimension, text, uprightDimension } from './shapes.ts'

/** Distance from an edge to its dimension line, and from that to the whole size. */
const FIRST = inches(14)
const NEXT = inches(30)

/**
 * Dimensions of an outline that is no rectangle: the length of each edge outside it, the whole width and depth, and
 * how far each beam's line lies behind the edge that it follows, with its posts from end to end.
 */
export function edgeDimensions({ job, layout, frame }: Design): readonly Primitive[] {
  const corners = layout.levels.flatMap(({ outline }) => outline)
  const width = Math.max(...corners.map(({ x }) => x))
  const depth = Math.max(...corners.map(({ y }) => y))
  const over = job.decking.overhang
  return [
    ...layout.levels.flatMap(({ outline, edges }) =>
      edges.flatMap((edge, i) => edgeLength(outline, i, edge.number, over + FIRST)),
    ),
    levelDimension('size.width', 0, width, depth, over + NEXT),
    uprightDimension('size.depth', 0, depth, 0, -(over + NEXT)),
    ...frame.beams.flatMap(postChain),
  ]
}

function edgeLength(
  outline: Design['layout']['outline'],
  index: number,
  number: number,
  off: number,
): readonly Primitive[] {
  const edge = edgeAt(outline, index)
  const { from, to } = edge
  const id = `edge-${number}`
  const out = movedLeft(edge, -off)
  if (from.y === to.y) {
    const [a, b] = [Math.min(from.x, to.x), Math.max(from.x, to.x)]
    return [levelDimension(id, a, b, from.y, out.from.y - from.y)]
  }
  if (from.x === to.x) {
    const [a, b] = [Math.min(from.y, to.y), Math.max(from.y, to.y)]
    return [uprightDimension(id, a, b, from.x, out.from.x - from.x)]
  }
  const words = printLength(ticks(Math.round(lengthOf(edge))))
  const middle = { x: (out.from.x + out.to.x) / 2, y: (out.from.y + out.to.y) / 2 }
  return [text(id, 'dimensions', middle.x, middle.y, words)]
}

/** Posts of a beam that lies along the house or away from it, from end to end, on its own line. */
function postChain({ id, line: [from, to], postsAt, length }: Beam): readonly Primitive[] {
  const level = from.y === to.y
  if (!level && from.x !== to.x) return []
  const start = level ? from.x : from.y
  const stops = [...new Set([0, ...postsAt, length])].sort((a, b) => a - b).map((at) => start + at)
  return stops.slice(1).map((stop, i) => {
    const name = `post-spacing-${id}-${i + 1}`
    const before = stops[i] ?? stop
    return level
      ? levelDimension(name, before, stop, from.y, 0)
      : uprightDimension(name, before, stop, from.x, 0)
  })
}
