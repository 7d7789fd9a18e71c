import type { Member } from '../frame/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { atJoint, type BoardJoint } from './board-joints.ts'
import { APART } from './corners.ts'
import { joistsInto } from './joists-into.ts'
import { standsIn, woodBehind } from './post-places.ts'

/** So far from a corner's other post one stands at most: common practice, no source. */
const FARTHEST = inches(18)

/** Two posts at a square corner at which joists run into one edge only. */
export interface CornerPair {
  /** id of the edge into which they run, and how far from the corner its post stands: beside a joist */
  readonly crossed: string
  readonly at: number
  /** id of the edge along which they lie: its post stands in the corner */
  readonly along: string
  readonly spot: DeckEdge['near']
  /** from the corner to that post's inner face, along the crossed edge, where the rails between the two end */
  readonly face: number
}

/** What corners of one loop of edges go by. */
interface Corners {
  readonly edges: readonly DeckEdge[]
  readonly members: readonly Member[]
  readonly joints: readonly BoardJoint[]
  readonly behindOf: ReadonlyMap<string, number>
  readonly post: number
}

/**
 * Corners at which the post of the edge that joists run into finds a joist for its hold-down. Between the end joist and
 * the next one it would find none; so it stands beside that one, and the other post right in the corner.
 */
export function cornerPairs(loop: Corners): readonly CornerPair[] {
  return loop.edges.flatMap((edge) =>
    joistsInto(loop.members, edge).length === 0
      ? []
      : loop.edges.flatMap((next) => {
          const spot = sharedSpot(edge, next)
          const pair = spot === null ? null : pairAt(loop, edge, next, spot)
          return pair === null ? [] : [pair]
        }),
  )
}

function pairAt(
  { members, joints, behindOf, post }: Corners,
  edge: DeckEdge,
  next: DeckEdge,
  spot: DeckEdge['near'],
): CornerPair | null {
  const isSquare = Math.abs(edge.along.x * next.along.x + edge.along.y * next.along.y) < 1e-9
  const [far, nextFar] = [otherEnd(edge, spot), otherEnd(next, spot)]
  // at a corner that juts into the deck each edge goes on to the side that the other one faces
  const jutsOut = (far.x - spot.x) * next.out.x + (far.y - spot.y) * next.out.y < 0
  if (!isSquare || !jutsOut || edge.wall || next.wall || joistsInto(members, next).length > 0) return null
  const [behind, aside] = [behindOf.get(edge.id) ?? 0, behindOf.get(next.id) ?? 0]
  const standsAt = (one: DeckEdge, corner: DeckEdge['near'], own: number) => {
    const inWood = standsIn(one, woodBehind(one, members, own, post), [], own, post)
    const jointed = atJoint(one, joints, own, post)
    return (from: number) => {
      const at = corner === one.near ? from : one.length - from
      return inWood(at) || jointed(at)
    }
  }
  const inCorner = behind + post / 2
  const room = Math.hypot(nextFar.x - spot.x, nextFar.y - spot.y) / 2
  const isAt = (one: DeckEdge) => (one.near.x === spot.x && one.near.y === spot.y ? one.near : one.far)
  if (inCorner > room || standsAt(next, isAt(next), aside)(inCorner)) return null
  const face = aside + post
  const stands = standsAt(edge, isAt(edge), behind)
  const at = joistsInto(members, edge)
    .map((joist) => (isAt(edge) === edge.near ? joist : edge.length - joist))
    .flatMap((joist) => [joist - (post + inches(1.5)) / 2, joist + (post + inches(1.5)) / 2])
    .filter((place) => {
      const clear = place - post / 2 - face
      return clear >= APART && clear <= FARTHEST && place < edge.length / 2 && !stands(place)
    })
    .toSorted((a, b) => a - b)[0]
  return at === undefined ? null : { crossed: edge.id, at, along: next.id, spot, face }
}

function sharedSpot(edge: DeckEdge, next: DeckEdge): DeckEdge['near'] | null {
  if (edge === next) return null
  const ends = [next.near, next.far]
  return [edge.near, edge.far].find((spot) => ends.some(({ x, y }) => x === spot.x && y === spot.y)) ?? null
}

function otherEnd({ near, far }: DeckEdge, spot: DeckEdge['near']): DeckEdge['near'] {
  return near.x === spot.x && near.y === spot.y ? far : near
}
