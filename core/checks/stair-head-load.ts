import type { DeckEdge, PlacedFlight, Spot, StairPlan } from '../stairs/index.ts'
import { inches, toFeet } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { walkedOf } from './flight-load.ts'
import type { BeamFacts, JoistCantilever } from './measures.ts'

/** An edge stands off the end of the joists by a rounding at most. */
const NEAR = inches(2)

/** What half of a first flight brings to the deck. */
export interface Borne {
  readonly flight: number
  readonly edge: DeckEdge
  /** along the edge, ticks */
  readonly width: number
  /** sq ft of half of the flight */
  readonly area: number
  /** lb of half of the flight, by live or snow load and dead load; and of its live load alone */
  readonly pounds: number
  readonly live: number
  /** times which it comes to the beam, for it hangs beyond it */
  readonly lever: number
  /** pounds × lever */
  readonly brought: number
  /** the beam that the joists under the head lie on; null where the flight hangs along a joist */
  readonly beam: BeamFacts | null
  readonly cantilever: JoistCantilever | null
  readonly postIds: readonly string[]
}

/**
 * The half flight that hangs at the head, and the beam and the posts that it comes to: beside an edge at which joists
 * end, the beam behind it; along a joist, the post nearest to it, with the longest lever of any. Null where nothing is
 * on posts.
 */
export function borneByDeck(context: CheckContext, stairs: StairPlan): Borne | null {
  const [flight] = stairs.flights
  if (flight === undefined || context.frame.posts.length === 0) return null
  const area = toFeet(flight.width) * toFeet(walkedOf(stairs, flight) / 2)
  const pounds = area * (context.load + context.job.site.deadLoad)
  const found = beamBehind(context, stairs.edge, flight)
  const all = context.groups.flatMap(({ cantilevers }) => cantilevers)
  const lever =
    found === null
      ? Math.max(1, ...all.map(leverOf))
      : found.cantilever === null
        ? 1
        : leverOf(found.cantilever)
  return {
    flight: flight.number,
    edge: stairs.edge,
    width: flight.width,
    area,
    pounds,
    live: area * context.load,
    lever,
    brought: pounds * lever,
    beam: found?.beam ?? null,
    cantilever: found?.cantilever ?? null,
    postIds: found?.postIds ?? [nearestPost(context, flight)],
  }
}

/** A load at the tip of a over a span of L comes to the support between as 1 + a ÷ L of it. */
function leverOf({ length, adjacent }: JoistCantilever): number {
  return adjacent > 0 ? 1 + length / adjacent : 1
}

interface Behind {
  readonly beam: BeamFacts
  readonly cantilever: JoistCantilever | null
  readonly postIds: readonly string[]
}

/** The beam that lies along an edge, at it or as far behind it as joists reach beyond it. */
function beamBehind(context: CheckContext, edge: DeckEdge, flight: PlacedFlight): Behind | null {
  const middle = {
    x: flight.head.x + (flight.across.x * flight.width) / 2,
    y: flight.head.y + (flight.across.y * flight.width) / 2,
  }
  const found = context.beams.flatMap((beam): readonly (Behind & { readonly off: number })[] => {
    const [from, to] = beam.beam.line
    const [off, other] = [from, to].map((end) => -dot(less(end, edge.near), edge.out))
    if (off === undefined || other === undefined || Math.abs(off - other) > NEAR || off < -NEAR) return []
    const along = (spot: Spot) => dot(less(spot, edge.near), edge.along)
    const [start, end] = [along(from), along(to)].toSorted((a, b) => a - b)
    const at = along(middle)
    if (start === undefined || end === undefined || at < start - flight.width || at > end + flight.width)
      return []
    const cantilever =
      context.groups
        .flatMap(({ cantilevers }) => cantilevers)
        .find(({ key, length }) => key === beam.beam.key && Math.abs(length - off) <= NEAR) ?? null
    if (cantilever === null && off > 2 * NEAR) return []
    const posts = beam.posts.map((post) => ({ id: post.id, at: along(post) })).toSorted((a, b) => a.at - b.at)
    return [{ beam, cantilever, off, postIds: eitherSide(posts, at, flight.width / 2) }]
  })
  const [nearest] = found.toSorted((a, b) => a.off - b.off)
  return nearest ?? null
}

/** The posts under what hangs there, and the next on either side of it. */
function eitherSide(
  posts: readonly { readonly id: string; readonly at: number }[],
  middle: number,
  half: number,
): readonly string[] {
  const before = posts.filter(({ at }) => at <= middle - half).at(-1)
  const after = posts.find(({ at }) => at >= middle + half)
  return posts
    .filter((one) => one === before || one === after || Math.abs(one.at - middle) < half)
    .map(({ id }) => id)
}

function nearestPost({ frame }: CheckContext, { head }: PlacedFlight): string {
  const off = (spot: Spot) => Math.hypot(spot.x - head.x, spot.y - head.y)
  return frame.posts.reduce((a, b) => (off(b) < off(a) ? b : a)).id
}

function less(a: Spot, b: Spot): Spot {
  return { x: a.x - b.x, y: a.y - b.y }
}

function dot(a: Spot, b: Spot): number {
  return a.x * b.x + a.y * b.y
}
