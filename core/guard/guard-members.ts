import { type LumberSize, sectionOf } from '../data/index.ts'
import { type Member, placedAlongEdge } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { DeckEdge, Spot } from '../stairs/index.ts'
import { feet, inches, ticks } from '../units/index.ts'
import { cornersBehind } from './boards-behind.ts'
import { guardStick } from './guard-stick.ts'
import type { GuardStretch } from './types.ts'

/** A cap comes in pieces no longer than this, each ending over a post: common practice, no source. */
const LONGEST_CAP = feet(16)

/** Balusters begin this far above the deck: no 4 in ball passes under the lower rail. Common practice, no source. */
export const UNDER_LOWER_RAIL = inches(3.5)

export const RAIL: LumberSize = '2x4'

/** Thickness of the cap rail; nothing where there is none. */
export function capThickness(job: Job): number {
  return job.guard.cap === 'none' ? 0 : sectionOf(job.guard.cap).thickness
}

/** Posts of a stretch: inside the boards along its edge, not notched. */
export function guardPosts(job: Job, { edge, behind, posts: placed }: GuardStretch): readonly Member[] {
  const { postSize, height } = job.guard
  const joist = sectionOf(job.frame.joists.size).depth
  const decking = sectionOf(job.decking.size).thickness
  const length = ticks(joist + decking + height - capThickness(job))
  const thick = sectionOf(postSize).thickness
  const top = edge.top + height - capThickness(job)
  return placed.map(({ id, at }) =>
    guardStick(job, {
      id,
      mark: `GP${id.split('-')[2]}`,
      role: 'guard post',
      size: postSize,
      length,
      corners: cornersBehind(edge, [at - thick / 2, at + thick / 2], [behind, behind + thick]),
      levels: [top - length, top],
      cause: {
        fields: ['guard.height', 'guard.postSize', 'guard.postSpacing', 'frame.joists.size'],
        ids: [],
        rule: 'From the joists’ lower edge to the cap; inside the rim, not notched (AWC DCA 6)',
      },
    }),
  )
}

/** Two rails on edge in every bay, between the faces of its posts. */
export function guardRails(job: Job, stretch: GuardStretch): readonly Member[] {
  if (job.guard.infill === 'panels') return []
  const { number, bays, edge } = stretch
  const middle = postsMiddle(job, stretch)
  const { thickness, depth } = sectionOf(RAIL)
  const top = edge.top + job.guard.height - capThickness(job)
  const low = edge.top + UNDER_LOWER_RAIL
  return bays.flatMap(({ from, to, clear }, i) =>
    (['top', 'bottom'] as const).map((which) =>
      guardStick(job, {
        id: `guard-rail-${number}-${i + 1}-${which}`,
        mark: `GR${number}-${i + 1}`,
        role: 'guard rail',
        size: RAIL,
        length: clear,
        corners: cornersBehind(edge, [from, to], [middle - thickness / 2, middle + thickness / 2]),
        levels: which === 'top' ? [top - depth, top] : [low, low + depth],
        cause: {
          fields: ['guard.infill', 'guard.postSpacing'],
          ids: [],
          rule: 'Between two posts, one at the top and one 3-1/2 in above the deck (common practice, no source)',
        },
      }),
    ),
  )
}

/** Pieces of cap along a stretch, each as many bays as make no more than 16 ft; mitred at the deck's corners. */
export function guardCaps(job: Job, stretch: GuardStretch): readonly Member[] {
  const { number, edge, from, to, posts: placed, mitres } = stretch
  const { cap, height } = job.guard
  if (cap === 'none') return []
  const pieces = capPieces([from, ...placed.slice(1, -1).map(({ at }) => at), to])
  const { depth, thickness } = sectionOf(cap)
  const middle = postsMiddle(job, stretch)
  const [outer, inner] = [middle - depth / 2, middle + depth / 2]
  const top = edge.top + height
  return pieces.map(([low, high], i) => {
    const [a, b] = [low === from ? mitres[0] : 0, high === to ? mitres[1] : 0]
    const [lowOuter, highOuter] = cornersBehind(edge, [low + a * outer, high - b * outer], [outer, inner])
    const [, , highInner, lowInner] = cornersBehind(edge, [low + a * inner, high - b * inner], [outer, inner])
    const corners = [lowOuter, highOuter, highInner, lowInner] as const
    const { placed: at } = placedAlongEdge(onward(edge, corners), { z0: top - thickness, z1: top })
    return {
      ...guardStick(job, {
        id: `guard-cap-${number}-${i + 1}`,
        mark: `GC${number}-${i + 1}`,
        role: 'guard cap',
        size: cap,
        length: at.length,
        corners,
        levels: [top - thickness, top],
        cause: {
          fields: ['guard.cap', 'size.width', 'size.depth'],
          ids: [],
          rule: 'On the posts from end to end, jointed over a post, 16 ft at most, mitred at corners: to the long points (common practice, no source)',
        },
      }),
      ...at,
    }
  })
}

/** From joint to joint, laid from the end from which the pieces come out the more even: not by the hand of the deck. */
function capPieces(stops: readonly number[]): readonly (readonly [number, number])[] {
  const onward = longestPieces(stops)
  const back = longestPieces(stops.map((at) => -at).toReversed())
    .map(([a, b]) => [0 - b, 0 - a] as const)
    .toReversed()
  const unevenness = (pieces: typeof onward) => pieces.reduce((sum, [a, b]) => sum + (b - a) ** 2, 0)
  return unevenness(back) < unevenness(onward) - 1 ? back : onward
}

/** Each piece as many bays as make no more than 16 ft. */
function longestPieces([first, ...stops]: readonly number[]): readonly (readonly [number, number])[] {
  const pieces: (readonly [number, number])[] = []
  let start = first ?? 0
  for (const [i, stop] of stops.entries()) {
    const next = stops[i + 1]
    if (next === undefined || next - start > LONGEST_CAP) {
      pieces.push([start, stop])
      start = stop
    }
  }
  return pieces
}

/** From the edge to the middle of the posts, on which rails and cap lie. */
export function postsMiddle(job: Job, { behind }: Pick<GuardStretch, 'behind'>): number {
  return behind + sectionOf(job.guard.postSize).thickness / 2
}

/** The corners as one goes round an outline that has the deck at its left: the outer edge first. */
function onward(
  { along, out }: DeckEdge,
  [a, b, c, d]: readonly [Spot, Spot, Spot, Spot],
): readonly [Spot, Spot, Spot, Spot] {
  // of an outline of positive area outward is at the right of the way
  const isOnward = out.x * along.y - out.y * along.x > 0
  return isOnward ? [a, b, c, d] : [b, a, d, c]
}
