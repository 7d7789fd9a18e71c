import { fromAbove, type Member } from '../frame/index.ts'
import { apart } from '../geometry/index.ts'
import { onFlight, type PlacedFlight, type StairPlan } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { cornersBehind } from './boards-behind.ts'
import { SHORT_REST } from './edge-drops.ts'
import type { GuardPost, GuardStretch, StairGuard, StairOpening } from './types.ts'

/** Levels that differ by less are one walking surface. */
const ONE_LEVEL = inches(0.25)

/** A guard beside stairs whose first post is its own begins at its face; past the noise of sums, ticks. */
const NOISE = 1

/** What stands where stairs meet a deck or a landing. */
export interface Standing {
  readonly stretches: readonly GuardStretch[]
  readonly stairs: readonly StairGuard[]
  /** posts, and what is fixed to them */
  readonly members: readonly Member[]
}

/**
 * The opening beside each end post of the guard beside stairs: to the nearest post of the level guard, or to what closes
 * the way there, on the surface that the flight leaves or comes to. A post that a flight below begins at has that guard
 * beside it. Level guards further off than a short rest of an edge begin where no guard is needed.
 */
export function stairOpenings(standing: Standing, plans: readonly StairPlan[]): readonly StairOpening[] {
  const flights = plans.flatMap((plan) => plan.flights)
  return standing.stairs.flatMap((side) => {
    const flight = flights.find(({ number }) => number === side.flight)
    if (flight === undefined) return []
    const [first, last] = [side.posts[0], side.posts.at(-1)]
    return [
      ...(first !== undefined && hasOwnHead(side) ? [{ id: first.id, level: flight.topLevel }] : []),
      ...(last !== undefined && !isShared(standing.stairs, flights, flight, side)
        ? [{ id: last.id, level: flight.bottomLevel }]
        : []),
    ].flatMap(({ id, level }) => nearest(id, level, standing))
  })
}

function hasOwnHead({ posts, bays }: StairGuard): boolean {
  const [post, bay] = [posts[0], bays[0]]
  return post !== undefined && (bay === undefined || bay.from > post.at - NOISE)
}

/** Whether a side of another flight begins at the last post of this one. */
function isShared(
  sides: readonly StairGuard[],
  flights: readonly PlacedFlight[],
  flight: PlacedFlight,
  side: StairGuard,
): boolean {
  const last = side.posts.at(-1)
  if (last === undefined) return false
  const own = onFlight(flight, last.at, side.across)
  return sides.some((other) => {
    const next = flights.find(({ number }) => number === other.flight)
    if (next === undefined || other === side || hasOwnHead(other)) return false
    if (Math.abs(next.topLevel - flight.bottomLevel) > ONE_LEVEL) return false
    const begins = onFlight(next, other.from, other.across)
    return Math.hypot(begins.x - own.x, begins.y - own.y) < inches(6)
  })
}

function nearest(id: string, level: number, { stretches, members }: Standing): readonly StairOpening[] {
  const own = members.find((one) => one.id === id)
  if (own === undefined) return []
  const [closest] = stretches
    .filter(({ edge }) => Math.abs(edge.top - level) < ONE_LEVEL)
    .flatMap((stretch) =>
      stretch.posts.map((post): StairOpening => {
        const closing = [
          ...members
            .filter((one) => one.id === post.id || one.cause.ids.includes(post.id))
            .map((one) => fromAbove(one)),
          ...baysPast(stretch, post),
        ]
        return {
          stairs: id,
          level: post.id,
          clear: Math.min(...closing.map((shape) => apart(fromAbove(own), shape))),
        }
      }),
    )
    .toSorted((a, b) => a.clear - b.clear)
  return closest === undefined || closest.clear >= SHORT_REST ? [] : [closest]
}

/** Bays that go on past the last post of a stretch, where that stands off its end. */
function baysPast({ edge, behind, posts, bays }: GuardStretch, { at }: GuardPost) {
  const past = bays.filter(
    ({ from, to }) =>
      (from > at && posts.every((one) => one.at <= at)) || (to < at && posts.every((one) => one.at >= at)),
  )
  return past.map(({ from, to }) => cornersBehind(edge, [from, to], [behind, behind + inches(1.5)]))
}
