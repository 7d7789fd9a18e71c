import type { Layout, Point } from '../layout/index.ts'

/** Farther than any deck is long, ticks. */
const FAR = 1e6

interface Line {
  readonly from: Point2
  readonly to: Point2
}
interface Point2 {
  readonly x: number
  readonly y: number
}

/** A corner of the outline at which a wall of the house ends or turns, by its number. */
export interface WallCorner extends Point {
  readonly number: number
}

/** What of the house stands between two places on the ground. */
export interface Sight {
  /** ends of the walls along the deck */
  readonly corners: readonly WallCorner[]
  /** whether a tape goes straight from one place to the other, outside of the house */
  readonly isClear: (from: Point2, to: Point2) => boolean
}

/**
 * The house along a deck's walls. A wall goes on past the deck where the deck ends, for nothing says how far: what would
 * have to pass there counts as barred.
 */
export function sightOf({ outline, edges }: Pick<Layout, 'outline' | 'edges'>): Sight {
  const walls = edges.flatMap((edge, i): readonly Line[] => {
    if (edge.kind !== 'wall') return []
    const count = edges.length
    const before = edges[(i + count - 1) % count]
    const after = edges[(i + 1) % count]
    const { from, to } = edge
    return [
      {
        from: before?.kind === 'open' && isConvex(outline, i) ? beyond(to, from) : from,
        to: after?.kind === 'open' && isConvex(outline, (i + 1) % count) ? beyond(from, to) : to,
      },
    ]
  })
  const corners = edges.flatMap(({ kind, from, number }, i): readonly WallCorner[] => {
    const before = edges[(i + edges.length - 1) % edges.length]
    return kind === 'wall' || before?.kind === 'wall' ? [{ ...from, number }] : []
  })
  return { corners, isClear: (from, to) => !walls.some((wall) => cross({ from, to }, wall)) }
}

/** Far past the second point on the line from the first. */
function beyond(from: Point2, to: Point2): Point2 {
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  return { x: to.x + ((to.x - from.x) * FAR) / long, y: to.y + ((to.y - from.y) * FAR) / long }
}

/** Twice the area of the triangle, above zero where the third lies on one side of the first two. */
function side(a: Point2, b: Point2, c: Point2): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

function isConvex(outline: readonly Point2[], corner: number): boolean {
  const count = outline.length
  const [before, at, after] = [(corner + count - 1) % count, corner, (corner + 1) % count].map(
    (i) => outline[i],
  )
  return before !== undefined && at !== undefined && after !== undefined && side(before, at, after) > 0
}

/** Whether two lines cross between their ends; what only touches does not. */
function cross(one: Line, other: Line): boolean {
  return (
    side(one.from, one.to, other.from) * side(one.from, one.to, other.to) < 0 &&
    side(other.from, other.to, one.from) * side(other.from, other.to, one.to) < 0
  )
}
