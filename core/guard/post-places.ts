import { fromAbove, type Member } from '../frame/index.ts'
import { convexOverlap, type Polygon } from '../geometry/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import { inches, TICKS_PER_INCH } from '../units/index.ts'
import { byEdge, cornersBehind } from './boards-behind.ts'
import { FRAME_WOOD } from './frame-wood.ts'
import type { GuardPost } from './types.ts'

/** How far a post may be moved out of the way of a joist, from the end of its stretch and towards it. */
export interface Room {
  readonly away: number
  readonly towards: number
}

const STEP = TICKS_PER_INCH / 4

/** Past the plates over a butt, from its middle: the farthest that an inner post gives way to anything but a joist at a slant. */
const ASIDE = inches(8)

/** A joist that is met at 18 degrees stands in the way for 15 in of an edge; so far a post gives way: common practice, no source. */
const FURTHER = inches(24)

/** Of the members, those that a post behind an edge could stand in. */
export function woodBehind(
  edge: DeckEdge,
  members: readonly Member[],
  behind: number,
  post: number,
): readonly Member[] {
  // a dropped beam ends under the joists, where the post does
  const lowest = edge.top - inches(2)
  return members.filter((member) => {
    if (!FRAME_WOOD.has(member.role) || member.cause.fields[0] === 'decking.border') return false
    if (member.box.z1 > edge.top || member.box.z1 < lowest) return false
    const corners = fromAbove(member).map((corner) => byEdge(edge, corner))
    const [back, along] = [corners.map((one) => one.behind), corners.map((one) => one.along)]
    return (
      Math.min(...back) < behind + post &&
      Math.max(...back) > behind &&
      Math.min(...along) < edge.length &&
      Math.max(...along) > 0
    )
  })
}

/**
 * Posts from the first to the last, at most the stated distance apart. Where joists run into the edge each inner post is
 * moved beside the nearest one, as long as no opening becomes too wide; more posts are tried before that is given up. A
 * post that would stand in a joist is moved beside it, as far as the opening at its end allows.
 */
export function postPlaces(
  { spacing, post, joists, way, stands }: Standing,
  [first, last]: readonly [number, number],
  rooms: readonly [Room, Room],
): readonly Omit<GuardPost, 'id'>[] {
  if (last - first < post) return [{ at: (first + last) / 2, onJoist: false }]
  const clearEnd = (at: number, room: Room, inward: 1 | -1) => {
    const clear = clearOf(at, room, inward, stands)
    // further from the end the opening there is filled
    return stands(clear) ? clearOf(at, { away: FURTHER, towards: 0 }, inward, stands) : clear
  }
  const [near, far] = [clearEnd(first, rooms[0], 1), clearEnd(last, rooms[1], -1)]
  // two that give way past each other stay where they are: the checks tell what they stand in
  const [start, end] = far - near < post ? [first, last] : [near, far]
  const beside = joists
    .flatMap((joist) => [joist - (post + inches(1.5)) / 2, joist + (post + inches(1.5)) / 2])
    .filter((place) => !stands(place))
  const fewest = Math.max(1, Math.ceil((end - start) / spacing - 1e-9))
  const ideal = (spaces: number) =>
    Array.from({ length: spaces + 1 }, (_, i) => start + (i * (end - start)) / spaces)
  const fits = (places: readonly { readonly at: number }[]) =>
    places.slice(1).every(({ at }, i) => at - (places[i]?.at ?? at) <= spacing + 1e-6)
  if (joists.length > 0) {
    for (let spaces = fewest; spaces <= fewest + 1; spaces += 1) {
      const moved = ideal(spaces).map((at, i) => {
        const near =
          i === 0 || i === spaces ? undefined : nearest(beside, at, [start + post, end - post], way)
        return near === undefined ? { at, onJoist: isBeside(beside, at) } : { at: near, onJoist: true }
      })
      if (fits(moved)) return moved
    }
  }
  for (let spaces = fewest; spaces <= fewest + 1; spaces += 1) {
    const room = { away: ASIDE, towards: ASIDE }
    const moved = ideal(spaces).map((at, i) => ({
      at: i === 0 || i === spaces ? at : clearOf(at, room, way, stands),
      onJoist: false,
    }))
    if (fits(moved)) return moved
  }
  return ideal(fewest).map((at) => ({ at, onJoist: false }))
}

/** What posts along an edge go by. */
export interface Standing {
  readonly spacing: number
  readonly post: number
  /** centres of the joists that run into the edge */
  readonly joists: readonly number[]
  /** on which side a post is sought first where both are as near: the way in which the joists are laid out */
  readonly way: 1 | -1
  /** whether a post with its centre there would stand in wood, or its bolts in a joint */
  readonly stands: (at: number) => boolean
}

/** Whether a post there would stand in one of the members, or in a post that stands already. */
export function standsIn(
  edge: DeckEdge,
  wood: readonly Member[],
  others: readonly Polygon[],
  behind: number,
  post: number,
): (at: number) => boolean {
  const shapes = [...wood.map(fromAbove), ...others]
  return (at) => {
    const square = cornersBehind(edge, [at - post / 2, at + post / 2], [behind, behind + post])
    return shapes.some((shape) => convexOverlap(shape, square, 1))
  }
}

/** The nearest place that is clear, by quarters of an inch, one way first; the place itself where none is. */
function clearOf(at: number, { away, towards }: Room, way: 1 | -1, stands: (at: number) => boolean): number {
  if (!stands(at)) return at
  for (let by = STEP; by <= Math.max(towards, away); by += STEP) {
    if (by <= away && !stands(at + way * by)) return at + way * by
    if (by <= towards && !stands(at - way * by)) return at - way * by
  }
  return at
}

function nearest(
  places: readonly number[],
  at: number,
  [from, to]: readonly [number, number],
  way: 1 | -1,
): number | undefined {
  return places
    .filter((place) => place >= from && place <= to)
    .toSorted((a, b) => Math.abs(a - at) - Math.abs(b - at) || way * (a - b))[0]
}

function isBeside(places: readonly number[], at: number): boolean {
  return places.some((place) => Math.abs(place - at) <= inches(3))
}
