import type { Design } from '../../estimate-types.ts'
import { lengthOf, movedLeft, type Segment } from '../../geometry/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { chainBeside, chainOutside, placeBehind } from './beam-dimensions.ts'
import { clearOf, figuresLine } from './clear-of.ts'
import { HOUSE } from './house-walls.ts'
import { outlineSides, type Side } from './outline-sides.ts'
import { stairDimensions, stairShapes } from './plan-stairs.ts'
import { levelDimension, text, uprightDimension } from './shapes.ts'

/** Distance from an edge to its first dimension line, from one to the next, and from an edge to the whole size. */
const FIRST = inches(14)
const NEXT = inches(14)
const WHOLE = inches(30)

/**
 * Dimensions of an outline that is no rectangle: outside each edge the posts of the beam that follows it, from end to end,
 * and the edge's length; the whole width and depth; and how far each beam lies behind its edge. None runs across stairs,
 * none lies on another level where it can stand elsewhere, and none says what another has said.
 */
export function edgeDimensions(design: Design): readonly Primitive[] {
  const { job, layout, frame } = design
  const over = job.decking.overhang
  const stairs = [...stairShapes(design), ...design.stairs.flatMap(stairDimensions).flatMap(figuresLine)]
  const sides = outlineSides(design, ticks(over + FIRST), ticks(over + FIRST + NEXT))
  const corners = layout.levels.flatMap(({ outline }) => outline)
  const width = Math.max(...corners.map(({ x }) => x))
  const depth = Math.max(...corners.map(({ y }) => y))

  const chains = new Map(
    sides
      .filter(({ beams }) => beams.length > 0)
      .map((side) => [
        side.number,
        chainOutside(side, outward(side.edge, clearOf(side.edge, over + FIRST, stairs))),
      ]),
  )
  const lengths = onlyOnce(sides, { width, depth }).flatMap((side) => {
    const inTheWay = [...stairs, ...(chains.get(side.number) ?? []).flatMap(figuresLine)]
    const least = over + FIRST + (side.isWall ? HOUSE : 0) + (chains.has(side.number) ? NEXT : 0)
    return edgeLength(side, clearOf(asWritten(side.edge), least, inTheWay))
  })
  const outside = [...[...chains.values()].flat(), ...lengths]
  const taken = [...stairs, ...outside.flatMap(figuresLine)]
  const front = { from: { x: width, y: depth }, to: { x: 0, y: depth } }
  const left = { from: { x: 0, y: depth }, to: { x: 0, y: 0 } }
  const followed = sides.flatMap((side) => side.beams.map((beam) => ({ side, beam })))
  return [
    ...outside,
    ...[
      levelDimension('size.width', 0, width, depth, clearOf(front, over + WHOLE, taken)),
      uprightDimension('size.depth', 0, depth, 0, -clearOf(left, over + WHOLE, taken)),
    ].filter((whole) => !lengths.some((one) => measuresSame(one, whole))),
    ...frame.beams
      .filter((beam) => !followed.some((one) => one.beam === beam))
      .flatMap((beam) => chainBeside(beam, frame)),
    ...followed.map(({ side, beam }) => placeBehind(side, beam, frame)),
  ]
}

/**
 * Of sides that measure from one place to the same other, the one whose dimension is best seen; those along the house
 * also give way to the whole size.
 */
function onlyOnce(
  sides: readonly Side[],
  whole: { readonly width: number; readonly depth: number },
): readonly Side[] {
  const rank = ({ beams, isFree, isFreeBeyond, isWall }: Side): number =>
    ((beams.length > 0 ? isFreeBeyond : isFree) ? 0 : 2) + (isWall ? 1 : 0)
  const best = new Map<string, Side>()
  for (const side of sides) {
    const key = spanOf(side.edge)
    const other = key === null ? undefined : best.get(key)
    if (key !== null && (other === undefined || rank(side) < rank(other))) best.set(key, side)
  }
  const saidByWhole = [`x 0 ${whole.width}`, `y 0 ${whole.depth}`]
  return sides.filter((side) => {
    const key = spanOf(side.edge)
    if (key === null) return true
    return best.get(key) === side && (rank(side) === 0 || !saidByWhole.includes(key))
  })
}

/** From where to where a level or upright edge goes; null for one at an angle. */
function spanOf({ from, to }: Segment): string | null {
  if (from.y === to.y) return `x ${Math.min(from.x, to.x)} ${Math.max(from.x, to.x)}`
  if (from.x === to.x) return `y ${Math.min(from.y, to.y)} ${Math.max(from.y, to.y)}`
  return null
}

function edgeLength({ edge, number }: Side, off: number): readonly Primitive[] {
  const { from, to } = edge
  const id = `edge-${number}`
  if (from.y === to.y) {
    const [a, b] = [Math.min(from.x, to.x), Math.max(from.x, to.x)]
    return [levelDimension(id, a, b, from.y, outward(edge, off))]
  }
  if (from.x === to.x) {
    const [a, b] = [Math.min(from.y, to.y), Math.max(from.y, to.y)]
    return [uprightDimension(id, a, b, from.x, outward(edge, off))]
  }
  const out = movedLeft(edge, -off)
  const words = printLength(ticks(Math.round(lengthOf(edge))))
  return [text(id, 'dimensions', (out.from.x + out.to.x) / 2, (out.from.y + out.to.y) / 2, words)]
}

/** Half of a length's figures, as wide as they may stand on the deck. */
const HALF_FIGURES = inches(14)

/** The stretch of an edge that its dimension takes: all of it, or its middle where one at an angle has figures and no line. */
function asWritten(edge: Segment): Segment {
  if (spanOf(edge) !== null) return edge
  const share = Math.min(0.5, HALF_FIGURES / lengthOf(edge))
  const at = (part: number) => ({
    x: edge.from.x + (edge.to.x - edge.from.x) * part,
    y: edge.from.y + (edge.to.y - edge.from.y) * part,
  })
  return { from: at(0.5 - share), to: at(0.5 + share) }
}

/** A distance outside a level or upright edge as the offset of its dimension. */
function outward({ from, to }: Segment, off: number): number {
  return from.y === to.y ? -Math.sign(to.x - from.x) * off : Math.sign(to.y - from.y) * off
}

/** Whether both measure along one axis from one place to the same other. */
function measuresSame(a: Primitive, b: Primitive): boolean {
  if (a.kind !== 'dimension' || b.kind !== 'dimension') return false
  const isLevel = b.y1 === b.y2
  return isLevel
    ? a.y1 === a.y2 && a.x1 === b.x1 && a.x2 === b.x2
    : a.x1 === a.x2 && a.y1 === b.y1 && a.y2 === b.y2
}
