import type { Design } from '../../estimate-types.ts'
import type { Beam } from '../../frame/index.ts'
import { edgeAt, isInside, lengthOf, movedLeft, pointAt, type Segment } from '../../geometry/index.ts'
import { feet, type Ticks } from '../../units/index.ts'

/** One side of a level's outline. */
export interface Side {
  readonly number: number
  readonly edge: Segment
  readonly isWall: boolean
  /** no deck lies where its first dimension would stand, or the one beyond that */
  readonly isFree: boolean
  readonly isFreeBeyond: boolean
  /** beams that lie along it, a little inside: their posts are measured from its ends */
  readonly beams: readonly Beam[]
}

/** A beam follows a side that lies at most so far from it, and along so much of its own length. */
const FARTHEST = feet(5)
const SHARE = 0.8
/** shares of a side's length at which it is looked beside it */
const SAMPLES = [0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95]

/** @param out how far outside a side its first dimension stands, @param beyond how far the next one */
export function outlineSides({ layout, frame }: Design, out: Ticks, beyond: Ticks): readonly Side[] {
  const outlines = layout.levels.map(({ outline }) => outline)
  const isClearAt = (edge: Segment, off: number): boolean =>
    SAMPLES.map((share) => pointAt(movedLeft(edge, -off), share)).every(
      (point) => !outlines.some((each) => isInside(each, point)),
    )
  const sides = layout.levels.flatMap(({ outline, edges }) =>
    edges.map(({ number, kind }, i) => {
      const edge = edgeAt(outline, i)
      const isFree = isClearAt(edge, out)
      return {
        number,
        edge,
        isWall: kind === 'wall',
        isFree,
        isFreeBeyond: isFree && isClearAt(edge, beyond),
      }
    }),
  )
  const followed = new Map(
    frame.beams.map((beam) => {
      const near = sides
        .filter(({ isFree, isWall }) => isFree && !isWall)
        .map((side) => ({ side, behind: behindSide(side.edge, beam) }))
        .filter((one): one is { side: (typeof sides)[number]; behind: number } => one.behind !== null)
      return [beam, near.sort((a, b) => a.behind - b.behind)[0]?.side]
    }),
  )
  return sides.map((side) => ({
    ...side,
    beams: frame.beams.filter((beam) => followed.get(beam) === side),
  }))
}

/** How far a beam lies behind a level or upright side that it follows; null where it follows it not. */
export function behindSide({ from, to }: Segment, { line: [a, b] }: Beam): number | null {
  const isLevel = from.y === to.y && a.y === b.y
  if (!isLevel && !(from.x === to.x && a.x === b.x)) return null
  const [start, end] = isLevel ? [from.x, to.x] : [from.y, to.y]
  const [first, last] = isLevel ? [a.x, b.x] : [a.y, b.y]
  const common =
    Math.min(Math.max(start, end), Math.max(first, last)) -
    Math.max(Math.min(start, end), Math.min(first, last))
  // the deck lies at the left of the side's way
  const behind = isLevel
    ? (a.y - from.y) * Math.sign(to.x - from.x)
    : (from.x - a.x) * Math.sign(to.y - from.y)
  const long = lengthOf({ from: a, to: b })
  return behind > 0 && behind <= FARTHEST && common >= SHARE * long ? behind : null
}
