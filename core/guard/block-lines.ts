import { sectionOf } from '../data/index.ts'
import { convexOverlap } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type DeckEdge, type Spot, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import type { BlockPlace, Hold } from './block-between.ts'
import { cornersBehind } from './boards-behind.ts'
import type { GuardPost, GuardStretch } from './types.ts'

/** Half the thickness of a block. */
export const HALF_BLOCK = inches(0.75)

/** So many inches from where a bay is looked for, or from a line of blocks, in turn. */
const SHIFTS = [0, 2, -2, 4, -4, 6, -6]

/** Half the breadth of a line drawn from block to block. */
const STRING = inches(1 / 4)

type Cornered = Pick<BlockPlace, 'corners'>

export interface BlockSpot {
  readonly at: Spot
  readonly way: Spot
}

/** A line of blocks: through a place, along a unit vector, and the ways on which the next bay may lie. */
export interface Line extends BlockSpot {
  readonly on: readonly Spot[]
  /** square to it: to which side a block is moved out of the line first */
  readonly aside: Spot
}

/** Where the block behind a post may stand, the best first: behind it along the edge, or beside it across the edge. */
export function lines(job: Job, stretch: GuardStretch, post: GuardPost): readonly Line[] {
  const { edge, behind } = stretch
  const half = halfPost(job)
  const inward = inwardOf(stretch, post)
  const along = { x: inward * edge.along.x, y: inward * edge.along.y }
  const crossing = crossingOf(edge)
  const back: Line = {
    at: spotAt(edge, post.at, -(behind + 2 * half + HALF_BLOCK)),
    way: edge.along,
    on: [along, { x: -along.x, y: -along.y }],
    aside: crossing,
  }
  const beside = [inward, -inward].map(
    (side): Line => ({
      at: spotAt(edge, post.at + side * (half + HALF_BLOCK), -(behind + half)),
      way: crossing,
      on: [crossing],
      aside: along,
    }),
  )
  return post.onJoist || stretch.crossed ? [back, ...beside] : [...beside, back]
}

/**
 * Places in the next bay of a line: it begins about a spacing on; an odd one sooner or later. Where none is clear in one
 * line with the block behind the post, beside it.
 */
export function nextBays(job: Job, { at, way, on, aside }: Line): readonly BlockSpot[] {
  // sooner or later may be a bay further on, where the line is clear again
  return SHIFTS.flatMap((odd) =>
    SHIFTS.flatMap((moved) =>
      on.map((step) => {
        const far = job.frame.joists.spacing + inches(odd)
        const off = inches(moved)
        return { at: { x: at.x + far * step.x + off * aside.x, y: at.y + far * step.y + off * aside.y }, way }
      }),
    ),
  )
}

/** Whether a block lies against the back or a side of a post, over an inch of it at least. */
export function lies(
  job: Job,
  { edge, behind }: GuardStretch,
  { at }: GuardPost,
  { corners }: Cornered,
): boolean {
  const half = halfPost(job)
  const inch = inches(1)
  const near = inches(1 / 8)
  const back = cornersBehind(
    edge,
    [at - half + inch, at + half - inch],
    [behind + half, behind + 2 * half + near],
  )
  const sides = cornersBehind(
    edge,
    [at - half - near, at + half + near],
    [behind + inch, behind + 2 * half - inch],
  )
  return [back, sides].some((shape) => convexOverlap(shape, corners, 1))
}

/** The line of a block that stands already, from where it meets this post. */
export function lineThrough(
  stretch: GuardStretch,
  post: GuardPost,
  { corners }: Cornered,
  centre: Spot,
): Line {
  const [a, b] = corners
  const long = Math.hypot(b.x - a.x, b.y - a.y)
  const way = { x: (b.x - a.x) / long, y: (b.y - a.y) / long }
  const middle = middleOf({ corners })
  const along = (centre.x - middle.x) * way.x + (centre.y - middle.y) * way.y
  const crossing = crossingOf(stretch.edge)
  const inward = inwardOf(stretch, post)
  const onward = { x: inward * stretch.edge.along.x, y: inward * stretch.edge.along.y }
  const across = way.x * crossing.x + way.y * crossing.y
  const isAcross = Math.abs(across) > 0.7
  const step = turnedTo(way, isAcross ? crossing : onward)
  return {
    at: { x: middle.x + along * way.x, y: middle.y + along * way.y },
    way,
    on: isAcross ? [step] : [step, { x: -step.x, y: -step.y }],
    aside: turnedTo({ x: -way.y, y: way.x }, isAcross ? onward : crossing),
  }
}

/** A unit vector or the opposite one, whichever goes more the way of another. */
function turnedTo({ x, y }: Spot, way: Spot): Spot {
  const sign = x * way.x + y * way.y < 0 ? -1 : 1
  return { x: sign * x, y: sign * y }
}

/** Whether nothing that blocks are nailed to stands between two of them: they are in one bay. */
export function isOneBay(holds: readonly Hold[], a: Cornered, b: Cornered): boolean {
  const [from, to] = [middleOf(a), middleOf(b)]
  const long = Math.max(1, Math.hypot(to.x - from.x, to.y - from.y))
  const side = { x: (-(to.y - from.y) * STRING) / long, y: ((to.x - from.x) * STRING) / long }
  const string = [
    { x: from.x - side.x, y: from.y - side.y },
    { x: to.x - side.x, y: to.y - side.y },
    { x: to.x + side.x, y: to.y + side.y },
    { x: from.x + side.x, y: from.y + side.y },
  ]
  return !holds.some(({ shape }) => convexOverlap(shape, string, 1))
}

function middleOf({ corners: [a, , c] }: Cornered): Spot {
  return { x: (a.x + c.x) / 2, y: (a.y + c.y) / 2 }
}

export function isSame(a: Cornered, b: Cornered): boolean {
  return a.corners.every((corner) =>
    b.corners.some((other) => Math.hypot(other.x - corner.x, other.y - corner.y) < 2),
  )
}

/** Along the edge towards the middle of a stretch. */
function inwardOf({ from, to }: GuardStretch, { at }: GuardPost): 1 | -1 {
  return at <= (from + to) / 2 ? 1 : -1
}

export function crossingOf({ out }: DeckEdge): Spot {
  return { x: 0 - out.x, y: 0 - out.y }
}

export function halfPost({ guard }: Job): number {
  return sectionOf(guard.postSize).thickness / 2
}
