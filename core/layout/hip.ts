import { type PlanePoint, turn } from '../geometry/index.ts'
import type { JoistDirection } from '../job/index.ts'
import type { Point } from './types.ts'

/** A part of the deck with the way of its joists. */
interface HipPart {
  readonly joists: JoistDirection
  readonly polygon: readonly Point[]
}

/** A seam from the deck's inside corner to its edge, which a hip from the same corner to the outside one takes the place of. */
interface HipPlace {
  readonly inside: PlanePoint
  /** where the seam ends at the deck's edge */
  readonly end: PlanePoint
  readonly outside: PlanePoint
  /** parts by index: the one that gives half of its corner, and the one that takes it */
  readonly gives: number
  readonly takes: number
}

/** The parts with every seam that ends at an inside corner turned to the outside corner. */
export function withHip(parts: readonly HipPart[], outline: readonly Point[]): readonly HipPart[] {
  return hipPlaces(parts, outline).reduce<readonly HipPart[]>(
    (all, { end, outside, gives, takes }) =>
      all.map((part, i) => {
        if (i === gives) return { ...part, polygon: part.polygon.filter((corner) => !same(corner, end)) }
        if (i !== takes) return part
        return {
          ...part,
          polygon: part.polygon.map((corner) => (same(corner, end) ? asPoint(outline, outside) : corner)),
        }
      }),
    parts,
  )
}

/** Where parts whose joists run two ways meet at an inside corner of the deck. */
function hipPlaces(parts: readonly HipPart[], outline: readonly Point[]): readonly HipPlace[] {
  return parts.flatMap((part, takes) =>
    part.polygon.flatMap((from, i): readonly HipPlace[] => {
      const to = part.polygon[(i + 1) % part.polygon.length] ?? from
      const gives = parts.findIndex(
        (other, k) => k !== takes && other.joists !== part.joists && hasEdge(other.polygon, to, from),
      )
      if (gives < 0) return []
      const ends: readonly (readonly [PlanePoint, PlanePoint])[] = [
        [from, to],
        [to, from],
      ]
      return ends.flatMap(([inside, end]) => {
        const outside = outsideCorner(outline, inside, end)
        return isReflex(outline, inside) && outside !== null && hasCorner(parts[gives], outside)
          ? [{ inside, end, outside, gives, takes }]
          : []
      })
    }),
  )
}

/** The deck's corner at which the edge ends on which a seam ends, as far from there as the inside corner. */
function outsideCorner(outline: readonly Point[], inside: PlanePoint, end: PlanePoint): PlanePoint | null {
  const reach = Math.hypot(end.x - inside.x, end.y - inside.y)
  for (const [i, from] of outline.entries()) {
    const to = outline[(i + 1) % outline.length] ?? from
    if (turn(from, to, end) !== 0) continue
    const square = (to.x - from.x) * (end.x - inside.x) + (to.y - from.y) * (end.y - inside.y)
    const far = [from, to].find((corner) => Math.hypot(corner.x - end.x, corner.y - end.y) === reach)
    if (square === 0 && far !== undefined) return far
  }
  return null
}

function isReflex(outline: readonly Point[], place: PlanePoint): boolean {
  return outline.some((corner, i) => {
    const before = outline[(i + outline.length - 1) % outline.length] ?? corner
    const after = outline[(i + 1) % outline.length] ?? corner
    return same(corner, place) && turn(before, corner, after) < 0
  })
}

function hasEdge(polygon: readonly Point[], from: PlanePoint, to: PlanePoint): boolean {
  return polygon.some(
    (corner, i) => same(corner, from) && same(polygon[(i + 1) % polygon.length] ?? corner, to),
  )
}

function hasCorner(part: HipPart | undefined, place: PlanePoint): boolean {
  return part?.polygon.some((corner) => same(corner, place)) === true
}

function asPoint(outline: readonly Point[], place: PlanePoint): Point {
  const found = outline.find((corner) => same(corner, place))
  if (found === undefined) throw new Error('a hip ends at a corner of the deck')
  return found
}

function same(a: PlanePoint, b: PlanePoint): boolean {
  return a.x === b.x && a.y === b.y
}
