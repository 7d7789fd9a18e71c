import { sectionOf } from '../../data/index.ts'
import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { balusterPlaces, levelAt, postsMiddle, UNDER_LOWER_RAIL } from '../../guard/index.ts'
import { type DeckEdge, onFlight, spotAt } from '../../stairs/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { type Depth, depthOf, standing, up, type View } from './upright-shapes.ts'

/** What is seen so much aslant is seen from its end: its balusters would stand in one line. */
const LEAST_WIDE = inches(6)

/** The guard as it is seen level: posts, rails, cap and balusters, on the deck, on landings and beside stairs. */
export function uprightGuard(design: Design, is: View, depth: Depth): readonly Primitive[] {
  const { guard, stairs } = design
  if (guard === null) return []
  // in a section what does not stand at the front would hide what is cut
  const isSeen = (edge: DeckEdge) =>
    (is !== 'section' || edge.side === 'front') && depthOf(edge, is) === depth
  const seen = stairs.filter(({ edge }) => isSeen(edge))
  const stretches = guard.stretches.filter(({ edge, landing }) =>
    landing === null ? isSeen(edge) : seen.some(({ number }) => number === landing),
  )
  const flights = new Set(seen.flatMap(({ flights: own }) => own.map(({ number }) => number)))
  const sides = guard.stairs.filter(({ flight }) => flights.has(flight))
  const shown = new Set([
    ...stretches.flatMap(({ posts }) =>
      posts.flatMap(({ id }) => [id, ...numbered(guard.members, `${id.replace('post', 'filler')}-`)]),
    ),
    ...stretches.flatMap(({ number }) => numbered(guard.members, `guard-rail-${number}-`)),
    ...stretches.flatMap(({ number }) => numbered(guard.members, `guard-cap-${number}-`)),
    ...sides.flatMap(({ number }) => numbered(guard.members, `stair-guard-rail-${number}-`)),
    ...sides.flatMap(({ number }) => numbered(guard.members, `stair-guard-cap-${number}-`)),
  ])
  return [
    ...balusters(design, is, stretches),
    ...stairBalusters(design, is, sides),
    ...stairPosts(design, is, sides),
    ...guard.members
      .filter(({ id }) => shown.has(id))
      .map((member) =>
        member.slope === undefined ? standing(member, is, 'guard') : climbing(member, member.slope, is),
      ),
  ]
}

type Guard = NonNullable<Design['guard']>

function numbered(members: readonly Member[], start: string): readonly string[] {
  return members.flatMap(({ id }) => (id.startsWith(start) ? [id] : []))
}

/** On the side that is looked at; behind it the rails alone are seen. */
function balusters({ job, guard }: Design, is: View, stretches: Guard['stretches']): readonly Primitive[] {
  if (job.guard.infill === 'panels' || guard === null) return []
  const facing = is === 'front' ? 'front' : 'left'
  return stretches
    .filter(({ edge, landing }) => edge.side === facing || (landing !== null && is === 'side'))
    .flatMap((stretch) => {
      const { edge, bays, number } = stretch
      const inside = -postsMiddle(job, stretch)
      const wide = Math.abs(along(is, spotAt(edge, edge.length, 0)) - along(is, spotAt(edge, 0, 0)))
      if (wide < LEAST_WIDE) return []
      return bays.flatMap((bay, i) =>
        balusterPlaces(bay).map((at) =>
          upright(`guard-rail-${number}-${i + 1}-top`, along(is, spotAt(edge, at, inside)), [
            edge.top + UNDER_LOWER_RAIL,
            edge.top + job.guard.height,
          ]),
        ),
      )
    })
}

/** Both sides of a flight are one behind the other: those of the first are drawn. */
function stairBalusters({ job, stairs }: Design, is: View, sides: Guard['stairs']): readonly Primitive[] {
  if (job.guard.infill === 'panels') return []
  const seen = [...Map.groupBy(sides, ({ flight }) => flight).values()].flatMap(([first]) => first ?? [])
  return seen.flatMap((side) => {
    const flight = flightOf(stairs, side)
    if (flight === undefined) return []
    const at = (down: number) => along(is, onFlight(flight, down, side.across))
    if (Math.abs(at(flight.run) - at(0)) < LEAST_WIDE) return []
    return side.bays.flatMap((bay, i) =>
      balusterPlaces(bay).map((down) => {
        const nosing = levelAt(side, down)
        return upright(`stair-guard-rail-${side.number}-${i + 1}-top`, at(down), [
          nosing + side.lowerRail,
          nosing + job.guard.height,
        ])
      }),
    )
  })
}

/** Posts beside stairs, their upper ends cut to the slope. */
function stairPosts({ job, stairs }: Design, is: View, sides: Guard['stairs']): readonly Primitive[] {
  const half = sectionOf(job.guard.postSize).thickness / 2
  return sides.flatMap((side) => {
    const flight = flightOf(stairs, side)
    if (flight === undefined) return []
    return side.posts.map(({ id, at, z0, z1 }): Primitive => {
      const corners = [at - half, at + half].flatMap((down) =>
        [side.across - half, side.across + half].map((across) => ({
          x: along(is, onFlight(flight, down, across)),
          z: z1 - (down - at + half) * side.slope,
        })),
      )
      const xs = corners.map(({ x }) => x)
      const [low, high] = [Math.min(...xs), Math.max(...xs)]
      const topAt = (place: number) =>
        Math.max(...corners.filter(({ x }) => Math.abs(x - place) < 1).map(({ z }) => z))
      const points = [
        { x: low, y: up(topAt(low)) },
        { x: high, y: up(topAt(high)) },
        { x: high, y: up(z0) },
        { x: low, y: up(z0) },
      ]
      return { kind: 'polygon', id, layer: 'guard', points, weight: 'fine', stroke: 'solid', fill: 'wood' }
    })
  })
}

/** The flight that a guard stands beside. */
export function flightOf(stairs: Design['stairs'], { flight }: Guard['stairs'][number]) {
  return stairs.flatMap(({ flights }) => flights).find(({ number }) => number === flight)
}

function along(is: View, { x, y }: { readonly x: number; readonly y: number }): number {
  return is === 'front' ? x : y
}

function upright(id: string, at: number, [low, high]: readonly [number, number]): Primitive {
  const ends = { x1: at, y1: up(low), x2: at, y2: up(high) }
  return { kind: 'line', id, layer: 'guard', ...ends, weight: 'fine', stroke: 'solid' }
}

/** A rail or a cap along the slope, its ends plumb. */
function climbing(
  { id }: Member,
  { from, to, upright: high }: NonNullable<Member['slope']>,
  is: View,
): Primitive {
  const [a, b] = [along(is, from), along(is, to)]
  return {
    kind: 'polygon',
    id,
    layer: 'guard',
    points: [
      { x: a, y: up(from.z) },
      { x: b, y: up(to.z) },
      { x: b, y: up(to.z - high) },
      { x: a, y: up(from.z - high) },
    ],
    weight: 'fine',
    stroke: 'solid',
    fill: 'wood',
  }
}
