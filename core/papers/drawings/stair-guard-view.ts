import { sectionOf } from '../../data/index.ts'
import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { balusterPlaces, boltedPosts, type GuardPlan, levelAt, type StairGuard } from '../../guard/index.ts'
import type { PlacedFlight } from '../../stairs/index.ts'
import { inches } from '../../units/index.ts'
import { box } from '../details/detail.ts'
import type { Drawing, Primitive } from '../types.ts'
import { drawingOf, levelDimension, text, uprightDimension } from './shapes.ts'
import { flightOf } from './upright-guard.ts'

const OFF = inches(5)
const UNDER = inches(4)
const BOLT = inches(0.5)

type Corner = readonly [down: number, level: number]

/**
 * The guard of one side of a flight seen square to its slope's plane, the head at the left: posts where they stand with
 * their bolts, rails, balusters, the line of the nosings and the heights over it, which are measured upright.
 */
function stairGuardView(design: Design, guard: GuardPlan, side: StairGuard, title: string): Drawing {
  const { job, stairs } = design
  const flight = flightOf(stairs, side)
  if (flight === undefined) throw new Error('a guard beside stairs has its flight')
  const id = `stair-guard-${side.number}`
  const half = sectionOf(job.guard.postSize).thickness / 2
  const treads = stairs
    .flatMap(({ members }) => members)
    .filter((member) => member.role === 'tread' && isOn(flight, member))
  const rails = guard.members.filter(({ id: own }) =>
    ['rail', 'cap'].some((what) => own.startsWith(`stair-guard-${what}-${side.number}-`)),
  )
  const bolted = new Map(boltedPosts(design, side).map((post) => [post.id, post]))
  const last = side.posts.at(-1)
  const [begin, end] = [side.from, side.to]
  const high = job.guard.height
  const middle = middleOf(side)
  const top = (at: number): number => -levelAt(side, at) - high
  const places = [0, ...side.posts.map(({ at }) => at)]
  const highest = top(Math.min(begin, ...places))
  return drawingOf(
    id,
    title,
    [
      ...treads.map((tread) => treadFrom(flight, tread)),
      ...side.bays.flatMap((bay, i) =>
        bay.balusters === 0
          ? []
          : balusterPlaces(bay).map((at): Primitive => {
              const [low, up] = [levelAt(side, at) + side.lowerRail, levelAt(side, at) + high]
              return line(`stair-guard-rail-${side.number}-${i + 1}-top`, [at, low], [at, up], 'fine')
            }),
      ),
      ...side.posts.flatMap((post): readonly Primitive[] => [
        polygon(post.id, [
          [post.at - half, post.z1],
          [post.at + half, post.z1 - 2 * half * side.slope],
          [post.at + half, post.z0],
          [post.at - half, post.z0],
        ]),
        text(post.id, 'guard', post.at, -post.z0 + UNDER, bolted.get(post.id)?.mark ?? ''),
        ...(bolted.get(post.id)?.bolts ?? []).map(
          (up): Primitive => ({
            kind: 'circle',
            id: post.id,
            layer: 'guard',
            cx: post.at,
            cy: -(post.z0 + up),
            r: BOLT,
            weight: 'medium',
            stroke: 'solid',
          }),
        ),
      ]),
      ...rails.flatMap((rail) => railFrom(flight, rail)),
      line(id, [begin, levelAt(side, begin)], [end, levelAt(side, end)], 'medium', 'hidden'),
      uprightDimension(id, top(middle), -levelAt(side, middle), middle, 0),
      ...places.slice(1).flatMap((at, i) => {
        const before = places[i] ?? 0
        return at - before > half ? [levelDimension(`${id}-at`, before, at, highest, -OFF)] : []
      }),
      ...(last === undefined ? [] : [uprightDimension(id, -last.z1, -last.z0, last.at + half, OFF)]),
    ],
    inches(4),
    false,
  )
}

/** Sides that look alike from their head, each once, with the words for all of them. */
export function stairGuardViews(design: Design, guard: GuardPlan): readonly Drawing[] {
  const alike = Map.groupBy(guard.stairs, ({ from, to, slope, lowerRail, posts, bays, headLevel }) =>
    JSON.stringify([
      from,
      to,
      slope,
      lowerRail,
      bays,
      posts.map(({ at, z0, z1 }) => [at, z0 - headLevel, z1 - headLevel].map(Math.round)),
    ]),
  )
  return [...alike.values()].flatMap((sides) => {
    const [side] = sides
    const numbers = sides.map(({ number }) => number).join(', ')
    const flights = [...new Set(sides.map(({ flight }) => flight))].join(', ')
    return side === undefined
      ? []
      : [
          stairGuardView(
            design,
            guard,
            side,
            `Beside the stairs: ${sides.length === 1 ? 'side' : 'sides'} ${numbers}, flight ${flights}`,
          ),
        ]
  })
}

/** Where a height is told: in the middle of the widest bay. */
function middleOf({ bays, from, to }: StairGuard): number {
  const widest = bays.toSorted((a, b) => b.clear - a.clear)[0]
  return widest === undefined ? (from + to) / 2 : widest.from + widest.clear / 2
}

function isOn(flight: PlacedFlight, { id }: Member): boolean {
  return id.startsWith(`tread-${flight.number}-`)
}

/** How far down a flight a place lies from its head. */
function downOf({ head, down }: PlacedFlight, { x, y }: { readonly x: number; readonly y: number }): number {
  return (x - head.x) * down.x + (y - head.y) * down.y
}

function treadFrom(flight: PlacedFlight, { id, box: own }: Member): Primitive {
  const ends = [downOf(flight, { x: own.x0, y: own.y0 }), downOf(flight, { x: own.x1, y: own.y1 })]
  return box(id, [Math.min(...ends), -own.z1], [Math.max(...ends), -own.z0], { fill: 'wood', weight: 'fine' })
}

function railFrom(flight: PlacedFlight, { id, slope }: Member): readonly Primitive[] {
  if (slope === undefined) return []
  const { from, to, upright } = slope
  const [a, b] = [downOf(flight, from), downOf(flight, to)]
  return [
    polygon(id, [
      [a, from.z],
      [b, to.z],
      [b, to.z - upright],
      [a, from.z - upright],
    ]),
  ]
}

function polygon(id: string, corners: readonly Corner[]): Primitive {
  const points = corners.map(([x, z]) => ({ x, y: -z }))
  return { kind: 'polygon', id, layer: 'guard', points, weight: 'medium', stroke: 'solid', fill: 'wood' }
}

function line(
  id: string,
  [x1, z1]: Corner,
  [x2, z2]: Corner,
  weight: 'fine' | 'medium',
  stroke: 'solid' | 'hidden' = 'solid',
): Primitive {
  return { kind: 'line', id, layer: 'guard', x1, y1: -z1, x2, y2: -z2, weight, stroke }
}
