import type { Design } from '../../estimate-types.ts'
import type { Beam } from '../../frame/index.ts'
import { edgeAt, lengthOf, movedLeft, type Segment } from '../../geometry/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { stairShapes } from './plan-stairs.ts'
import { levelDimension, text, uprightDimension } from './shapes.ts'

/** Distance from an edge to its dimension line, and from that to the whole size. */
const FIRST = inches(14)
const NEXT = inches(30)
/** A dimension takes so much on either side of its line, figures and ticks, and keeps so much off stairs. */
const BAND = inches(8)
const CLEAR = inches(12)

type Shape = ReturnType<typeof stairShapes>[number]

/**
 * Dimensions of an outline that is no rectangle: the length of each edge outside it, the whole width and depth, and
 * how far each beam's line lies behind the edge that it follows, with its posts from end to end. None runs across stairs,
 * and none says again what an edge there has said.
 */
export function edgeDimensions(design: Design): readonly Primitive[] {
  const { job, layout, frame } = design
  const stairs = stairShapes(design)
  const corners = layout.levels.flatMap(({ outline }) => outline)
  const width = Math.max(...corners.map(({ x }) => x))
  const depth = Math.max(...corners.map(({ y }) => y))
  const over = job.decking.overhang
  const edges = layout.levels.flatMap(({ outline, edges: all }) =>
    all.flatMap((edge, i) => edgeLength(outline, i, edge.number, over + FIRST, stairs)),
  )
  const taken = [...stairs, ...edges.flatMap(lineOf)]
  const below = clearOf({ from: { x: width, y: depth }, to: { x: 0, y: depth } }, over + NEXT, taken)
  const beside = clearOf({ from: { x: 0, y: depth }, to: { x: 0, y: 0 } }, over + NEXT, taken)
  return [
    ...edges,
    ...[
      levelDimension('size.width', 0, width, depth, below),
      uprightDimension('size.depth', 0, depth, 0, -beside),
    ].filter((whole) => !edges.some((edge) => isSame(edge, whole))),
    ...frame.beams.flatMap(postChain),
  ]
}

function edgeLength(
  outline: Design['layout']['outline'],
  index: number,
  number: number,
  least: number,
  stairs: readonly Shape[],
): readonly Primitive[] {
  const edge = edgeAt(outline, index)
  const { from, to } = edge
  const id = `edge-${number}`
  const out = movedLeft(edge, -clearOf(edge, least, stairs))
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

/** Whether both measure from one place to the same other. */
function isSame(a: Primitive, b: Primitive): boolean {
  if (a.kind !== 'dimension' || b.kind !== 'dimension') return false
  return a.x1 === b.x1 && a.y1 === b.y1 && a.x2 === b.x2 && a.y2 === b.y2
}

/** The line on which a dimension's figures stand. */
function lineOf(p: Primitive): readonly Shape[] {
  if (p.kind !== 'dimension') return []
  const [dx, dy] = p.x1 === p.x2 ? [p.offset, 0] : [0, p.offset]
  return [
    [
      { x: p.x1 + dx, y: p.y1 + dy },
      { x: p.x2 + dx, y: p.y2 + dy },
    ],
  ]
}

/**
 * How far outside an edge its dimension stands: so far at least, and past every stair, or other dimension, that its line
 * or its figures would run across.
 */
function clearOf({ from, to }: Segment, least: number, stairs: readonly Shape[]): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  // the outline runs with the deck at its left, so that outside lies at the right of each edge
  const rooms = stairs.map((shape) => {
    const ways = shape.map(({ x, y }) => (x - from.x) * along.x + (y - from.y) * along.y)
    const outs = shape.map(({ x, y }) => (x - from.x) * along.y - (y - from.y) * along.x)
    return {
      isBeside: Math.max(...ways) > 0 && Math.min(...ways) < length,
      near: Math.min(...outs),
      far: Math.max(...outs),
    }
  })
  let off = least
  for (;;) {
    const inWay = rooms.filter(({ isBeside, near, far }) => isBeside && near < off + BAND && far > off - BAND)
    if (inWay.length === 0) return off
    off = Math.max(...inWay.map(({ far }) => far)) + CLEAR
  }
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
