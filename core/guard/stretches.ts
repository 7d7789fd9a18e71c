import { sectionOf } from '../data/index.ts'
import type { HouseHoldDown, Member } from '../frame/index.ts'
import type { Polygon } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { fillBay } from './bays.ts'
import { atJoint, type BoardJoint } from './board-joints.ts'
import { boardsBehind, cornersBehind } from './boards-behind.ts'
import { type CornerPair, cornerPairs } from './corner-pairs.ts'
import { APART, fromCorner, halfAngle } from './corners.ts'
import { SHORT_REST } from './edge-drops.ts'
import { joistsInto } from './joists-into.ts'
import { postPlaces, type Room, standsIn, woodBehind } from './post-places.ts'
import type { EdgePart, GuardBay, GuardPost, GuardStretch } from './types.ts'

/** A post's face stands this far off a wall, or off the board along it: common practice, no source. */
const OFF_WALL = inches(0.5)

/**
 * Off a ledger, so that its last fasteners' heads and the end joist's angle have room before the post, and still no 4 in
 * ball between the post and the wall: common practice, no source.
 */
const OFF_LEDGER = inches(2)

/** Least clear opening that is worth rails; less is closed by the posts themselves. */
const LEAST_BAY = inches(4)

/** A shorter rest of an edge beside a way off it has no room for a guard. */
const LEAST_STRETCH = inches(8)

/** The edges of one level or of one landing, and what the posts behind them stand among. */
export interface GuardLoop {
  readonly edges: readonly DeckEdge[]
  /** number of the stairs on whose landing they are; null: of the deck */
  readonly landing: number | null
  readonly members: readonly Member[]
  /** of the boards along the edges, where no bolts may go */
  readonly joints: readonly BoardJoint[]
  /** places of hold-downs to the house, in which no block may stand */
  readonly taken: readonly Pick<HouseHoldDown, 'joist' | 'place'>[]
  /** what of each edge is to be guarded, by its id */
  readonly wanted: ReadonlyMap<string, readonly EdgePart[]>
  /** where one walks off an edge, or a level as high or higher stands along it */
  readonly waysOff: (edge: DeckEdge) => readonly EdgePart[]
}

/** How a stretch ends: at a wall, at a corner that the next one turns, at the corner of an open edge, or free. */
type End = (
  | { readonly kind: 'wall' | 'open corner'; readonly next: DeckEdge }
  | {
      readonly kind: 'corner'
      readonly next: DeckEdge
      readonly half: number
      readonly pair: CornerPair | undefined
    }
  | { readonly kind: 'free' | 'partial' }
) & { readonly at: number }

/** A part of an edge, by its id, in which no post's middle may lie. */
export interface Refusal extends EdgePart {
  readonly edge: string
}

/** Stretches of guard along the edges, left open where one walks off them; numbered on from those before. */
export function layStretches(
  job: Job,
  loops: readonly GuardLoop[],
  refused: readonly Refusal[],
): readonly GuardStretch[] {
  let number = 0
  let post = 0
  return loops.flatMap((loop) => {
    const standing: Polygon[] = []
    const behindOf = new Map(loop.edges.map((edge) => [edge.id, boardsBehind(edge, loop.members)]))
    const spans = new Map(loop.edges.map((edge) => [edge.id, spansOf(loop, edge)]))
    const pairs = cornerPairs({ ...loop, behindOf, post: sectionOf(job.guard.postSize).thickness })
    const half = sectionOf(job.guard.postSize).thickness / 2
    const laid = inTurn(loop.edges).flatMap((edge) =>
      (spans.get(edge.id) ?? []).map((span) => {
        const ends = [
          endAt(loop, spans, pairs, edge, span.from, edge.near),
          endAt(loop, spans, pairs, edge, span.to, edge.far),
        ] as const
        const behind = behindOf.get(edge.id) ?? inches(1.5)
        const off = refused.filter((one) => one.edge === edge.id)
        const places = layPosts(job, loop, edge, ends, behind, behindOf, standing, off)
        standing.push(
          ...places.map(({ at }) => cornersBehind(edge, [at - half, at + half], [behind, behind + 2 * half])),
        )
        return { edge, span, ends, behind, places }
      }),
    )
    return loop.edges
      .flatMap((edge) => laid.filter((one) => one.edge === edge))
      .map(({ edge, span, ends, behind, places }): GuardStretch => {
        number += 1
        const posts = places.map((place): GuardPost => {
          post += 1
          return { id: `guard-post-${post}`, ...place }
        })
        const bays = posts.slice(1).flatMap(({ at }, k) => {
          const bay = fillBay(job, { from: (posts[k]?.at ?? at) + half, to: at - half }, false)
          return bay.clear < LEAST_BAY ? [] : [bay]
        })
        const moved = movedEnds(job, edge, ends, behind, behindOf, posts)
        // a part that begins between two joists does so at the first post beside one
        const from = ends[0].kind === 'partial' ? Math.min(span.from, (posts[0]?.at ?? 0) - half) : span.from
        const to = ends[1].kind === 'partial' ? Math.max(span.to, (posts.at(-1)?.at ?? 0) + half) : span.to
        return {
          number,
          edge,
          landing: loop.landing,
          from,
          to,
          behind,
          crossed: joistsInto(loop.members, edge).length > 0,
          mitres: [mitreOf(ends[0]), mitreOf(ends[1])],
          posts,
          bays: [...moved[0], ...bays, ...moved[1]],
          closed: [faceOf(ends[0], edge) !== null, faceOf(ends[1], edge) !== null],
        }
      })
  })
}

/** Posts give way to those of other edges: slanting ones first, the shorter before the longer, whatever the hand of the deck. */
function inTurn(edges: readonly DeckEdge[]): readonly DeckEdge[] {
  const isLevel = ({ out }: DeckEdge) => Number(Math.min(Math.abs(out.x), Math.abs(out.y)) < 1e-9)
  return edges.toSorted((a, b) => isLevel(a) - isLevel(b) || Math.round(a.length - b.length))
}

/** Openings at either end whose post stands in another place than the ball there allows, to be filled like a bay. */
function movedEnds(
  job: Job,
  edge: DeckEdge,
  [near, far]: readonly [End, End],
  behind: number,
  behindOf: ReadonlyMap<string, number>,
  posts: readonly GuardPost[],
): readonly [readonly GuardBay[], readonly GuardBay[]] {
  const post = sectionOf(job.guard.postSize).thickness
  const [first, last] = [posts[0]?.at ?? 0, posts.at(-1)?.at ?? edge.length]
  const insets = [near, far].map((end) => insetOf(end, edge, boardsOf(end, behindOf), behind, post))
  const [a, b] = [near.at + (insets[0] ?? 0), far.at - (insets[1] ?? 0)]
  const isFar = (end: End, by: number) =>
    end.kind !== 'partial' && by > roomAt(end, boardsOf(end, behindOf)).away + 1
  const between = (from: number, to: number) => {
    const bay = fillBay(job, { from, to }, false)
    return bay.clear < LEAST_BAY ? [] : [bay]
  }
  const [nearFace, farFace] = [faceOf(near, edge), faceOf(far, edge)]
  return [
    nearFace !== null
      ? between(nearFace, first - post / 2)
      : isFar(near, first - a)
        ? between(Math.max(0, a - post / 2 - APART), first - post / 2)
        : [],
    farFace !== null
      ? between(last + post / 2, edge.length - farFace)
      : isFar(far, b - last)
        ? between(last + post / 2, Math.min(edge.length, b + post / 2 + APART))
        : [],
  ]
}

/** From a corner to the face of the next edge's post, at which rails of this one end; null where they do not. */
function faceOf(end: End, edge: DeckEdge): number | null {
  return end.kind === 'corner' && end.pair?.crossed === edge.id ? end.pair.face : null
}

function mitreOf(end: End): number {
  return end.kind === 'corner' ? 1 / Math.tan(end.half) : 0
}

/** What is to be guarded of an edge, less the ways off it; a short rest up to one of them is guarded too. */
function spansOf(loop: GuardLoop, edge: DeckEdge): readonly EdgePart[] {
  const ways = loop.waysOff(edge).toSorted((a, b) => a.from - b.from)
  return (loop.wanted.get(edge.id) ?? []).flatMap((needed) => {
    const part = upToWays(needed, ways)
    const spans: EdgePart[] = []
    let from = part.from
    for (const way of ways) {
      if (way.from > from) spans.push({ from, to: Math.min(way.from, part.to) })
      from = Math.max(from, way.to)
    }
    spans.push({ from, to: part.to })
    return spans.filter((span) => span.to - span.from >= LEAST_STRETCH)
  })
}

/** A part that ends shortly before a way off the edge goes on to it: nobody takes the rest for a way down. */
function upToWays({ from, to }: EdgePart, ways: readonly EdgePart[]): EdgePart {
  const before = ways.map((way) => way.to).filter((end) => end < from && from - end < SHORT_REST)
  const after = ways.map((way) => way.from).filter((end) => end > to && end - to < SHORT_REST)
  return {
    from: before.length === 0 ? from : Math.max(...before),
    to: after.length === 0 ? to : Math.min(...after),
  }
}

function endAt(
  loop: GuardLoop,
  spans: ReadonlyMap<string, readonly EdgePart[]>,
  pairs: readonly CornerPair[],
  edge: DeckEdge,
  at: number,
  spot: DeckEdge['near'],
): End {
  const corner = spot === edge.near ? 0 : edge.length
  if (Math.abs(at - corner) > 1) {
    const beside = loop.waysOff(edge).some(({ from, to }) => Math.abs(from - at) < 1 || Math.abs(to - at) < 1)
    return { kind: beside ? 'free' : 'partial', at }
  }
  const next = loop.edges.find((one) => one !== edge && touches(one, spot))
  if (next === undefined) return { kind: 'free', at }
  if (next.wall) return { kind: 'wall', next, at }
  const reaches = (spans.get(next.id) ?? []).some(({ from, to }) =>
    next.near.x === spot.x && next.near.y === spot.y ? from < 1 : to > next.length - 1,
  )
  const half = halfAngle(edge, next, spot)
  if (reaches) {
    const pair = pairs.find(
      (one) =>
        one.spot.x === spot.x &&
        one.spot.y === spot.y &&
        [one.crossed, one.along].every((id) => id === edge.id || id === next.id),
    )
    return { kind: 'corner', next, half, pair, at }
  }
  return half > Math.PI / 2 ? { kind: 'free', at } : { kind: 'open corner', next, at }
}

function layPosts(
  job: Job,
  { members, joints }: GuardLoop,
  edge: DeckEdge,
  [near, far]: readonly [End, End],
  behind: number,
  behindOf: ReadonlyMap<string, number>,
  standing: readonly Polygon[],
  refused: readonly EdgePart[],
): readonly Omit<GuardPost, 'id'>[] {
  const post = sectionOf(job.guard.postSize).thickness
  const joists = joistsInto(members, edge)
  const inWood = standsIn(edge, woodBehind(edge, members, behind, post), standing, behind, post)
  const jointed = atJoint(edge, joints, behind, post)
  const isRefused = (at: number) => refused.some(({ from, to }) => from < at && at < to)
  const stands = (at: number) => inWood(at) || jointed(at) || isRefused(at)
  const inset = (end: End) => insetOf(end, edge, boardsOf(end, behindOf), behind, post)
  const bearing = (at: number, way: 1 | -1) => {
    const beside = joists
      .map((joist) => joist + (way * (post + inches(1.5))) / 2)
      .filter((place) => way * (place - at) >= 0 && place > post / 2 && place < edge.length - post / 2)
    return beside.toSorted((a, b) => way * (a - b))[0] ?? at
  }
  const first = near.at + inset(near)
  const last = far.at - inset(far)
  const places = postPlaces(
    { spacing: job.guard.postSpacing, post, joists, way: layoutWay(job, joists), stands },
    [near.kind === 'partial' ? bearing(first, -1) : first, far.kind === 'partial' ? bearing(last, 1) : last],
    [roomAt(near, boardsOf(near, behindOf)), roomAt(far, boardsOf(far, behindOf))],
  )
  return places.map((place) => ({
    ...place,
    ...(jointed(place.at) ? { atJoint: true } : {}),
    ...(inWood(place.at) ? { inWood: true } : {}),
  }))
}

/** The way along an edge in which the joists that run into it are laid out; onward where none do. */
function layoutWay({ frame }: Job, joists: readonly number[]): 1 | -1 {
  return joists.length > 0 && frame.joists.layoutFrom === 'right' ? -1 : 1
}

/**
 * From the end of a stretch to the centre of its last post. Two posts stand at a corner: one beside a joist and one in the
 * corner, or each far enough along its own edge to clear the other behind the rim (common practice, no source).
 */
function insetOf(end: End, edge: DeckEdge, boards: number, behind: number, post: number): number {
  if (end.kind === 'wall') return (boards > 0 ? boards + OFF_LEDGER : OFF_WALL) + post / 2
  if (end.kind === 'corner' && end.pair !== undefined)
    return end.pair.crossed === edge.id ? end.pair.at : boards + post / 2
  if (end.kind === 'corner') return fromCorner(end.half, Math.max(boards, behind), post) + post / 2
  return boards + post / 2
}

/** Thickness of the boards along the edge that an end meets. */
function boardsOf(end: End, behindOf: ReadonlyMap<string, number>): number {
  return 'next' in end ? (behindOf.get(end.next.id) ?? 0) : 0
}

/** How far an end's post may be moved so that no 4 in ball passes beside it (IRC 2021 R312.1.3). */
function roomAt(end: End, boards: number): Room {
  const { kind } = end
  if (kind === 'wall' && boards > 0) return { away: inches(0.25), towards: 0 }
  if (end.kind === 'corner' && end.pair !== undefined) return { away: 0, towards: 0 }
  // at a corner that juts in the posts' outer corners are nearest
  if (end.kind === 'corner' && end.half > Math.PI / 2) return { away: inches(2), towards: 0 }
  if (kind === 'corner') return { away: inches(1.25), towards: inches(4.5) }
  if (kind === 'partial') return { away: inches(4), towards: 0 }
  if (kind === 'free') return { away: inches(3.75), towards: inches(1.25) }
  return { away: inches(2), towards: 0 }
}

function touches(edge: DeckEdge, spot: DeckEdge['near']): boolean {
  return [edge.near, edge.far].some((end) => end.x === spot.x && end.y === spot.y)
}
