import { lengthOf, type PlanePoint, type Polygon } from '../geometry/index.ts'
import { feet, inches, type Ticks, ticks } from '../units/index.ts'
import { fromAbove } from './footprint.ts'
import type { Member } from './types.ts'

/** A narrower strip of a board takes no screw in each joist that does not split it: common practice, no source. */
const NARROW = inches(2)

/** A shorter one is a corner that is cut, not a strip. */
const SHORT = feet(1)

/** A part of a board that is narrower than the rest of it. */
export interface NarrowStretch {
  readonly member: Member
  readonly length: Ticks
  readonly width: Ticks
}

/** Where the edge of a deck runs along within a board and leaves a strip of it: boards ripped as a whole are others. */
export function narrowStretches(members: readonly Member[]): readonly NarrowStretch[] {
  return members.flatMap((member) => {
    if (member.plan === undefined || member.ripTo !== null) return []
    const shape = alongItself(fromAbove(member))
    const stops = [...new Set(shape.map(({ x }) => Math.round(x)))].toSorted((a, b) => a - b)
    return stops.slice(1).flatMap((to, i): readonly NarrowStretch[] => {
      const from = stops[i] ?? to
      const width = Math.round(widthAt(shape, (from + to) / 2))
      return to - from < SHORT || width <= 0 || width >= NARROW
        ? []
        : [{ member, length: ticks(to - from), width: ticks(width) }]
    })
  })
}

/** The shape turned so that its longest edge lies level. */
function alongItself(shape: Polygon): Polygon {
  const edges = shape.map((from, i) => ({ from, to: shape[(i + 1) % shape.length] ?? from }))
  const longest = edges.reduce((a, b) => (lengthOf(b) > lengthOf(a) ? b : a))
  const length = lengthOf(longest)
  const [x, y] = [(longest.to.x - longest.from.x) / length, (longest.to.y - longest.from.y) / length]
  return shape.map((corner) => ({ x: corner.x * x + corner.y * y, y: corner.y * x - corner.x * y }))
}

/** How much of a shape lies above and below each other at a place along it. */
function widthAt(shape: Polygon, at: number): number {
  const met = shape
    .flatMap((from, i): readonly number[] => {
      const to: PlanePoint = shape[(i + 1) % shape.length] ?? from
      if (from.x > at === to.x > at) return []
      return [from.y + ((at - from.x) / (to.x - from.x)) * (to.y - from.y)]
    })
    .toSorted((a, b) => a - b)
  return met.reduce((sum, y, i) => (i % 2 === 1 ? sum + y - (met[i - 1] ?? y) : sum), 0)
}
