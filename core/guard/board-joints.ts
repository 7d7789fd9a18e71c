import type { Frame, Member } from '../frame/index.ts'
import type { DeckEdge, Spot } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { byEdge } from './boards-behind.ts'

/** Plates over a butt reach so far from it along the board: common practice, no source. */
const PLATE = inches(6)

/** A place on the plan where a board along an edge is jointed or may be, whatever stands there. */
export interface BoardJoint extends Spot {
  /** upper edge of the board */
  readonly top: number
}

/** Butts of end joists, and inner posts over which a flush beam may be jointed. */
export function boardJoints({ members, beams, runs, posts }: Frame): readonly BoardJoint[] {
  const ends = members.filter(({ role }) => role === 'end joist')
  const flush = new Map(
    beams.flatMap((beam) => (beam.flush ? beam.plyIds.map((id) => [id, beam] as const) : [])),
  )
  return [
    ...ends.flatMap((one, i) => ends.slice(i + 1).flatMap((other) => butt(one, other))),
    ...runs.flatMap(({ memberIds, points }) => {
      const ply = members.find(({ id }) => id === memberIds[0])
      if (ply === undefined || !flush.has(ply.id)) return []
      const under = new Set(points.map(({ supportId }) => supportId))
      return posts.filter(({ id }) => under.has(id)).map(({ x, y }) => ({ x, y, top: ply.box.z1 }))
    }),
  ]
}

/** Where one end joist goes on from another in one line. */
function butt({ box: a }: Member, { box: b }: Member): readonly BoardJoint[] {
  const isSame = (one: number, other: number) => Math.abs(one - other) < 1
  if (!isSame(a.z1, b.z1)) return []
  const middle = { x: (a.x0 + a.x1) / 2, y: (a.y0 + a.y1) / 2, top: a.z1 }
  if (isSame(a.x0, b.x0) && isSame(a.x1, b.x1)) {
    const at = isSame(a.y1, b.y0) ? a.y1 : isSame(b.y1, a.y0) ? a.y0 : null
    return at === null ? [] : [{ ...middle, y: at }]
  }
  if (isSame(a.y0, b.y0) && isSame(a.y1, b.y1)) {
    const at = isSame(a.x1, b.x0) ? a.x1 : isSame(b.x1, a.x0) ? a.x0 : null
    return at === null ? [] : [{ ...middle, x: at }]
  }
  return []
}

/**
 * Whether the bolts of a post behind an edge would go through a joint of the board along it, or through its plates.
 * @param behind from the edge to the posts' faces
 * @param post across
 */
export function atJoint(
  edge: DeckEdge,
  joints: readonly BoardJoint[],
  behind: number,
  post: number,
): (at: number) => boolean {
  const places = joints
    .filter(({ top }) => top <= edge.top && top >= edge.top - inches(2))
    .map((joint) => byEdge(edge, joint))
    .filter((place) => place.behind > 0 && place.behind < behind)
    .map(({ along }) => along)
  return (at) => places.some((place) => Math.abs(place - at) < PLATE + post / 2)
}
