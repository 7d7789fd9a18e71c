import { sectionOf } from '../../data/index.ts'
import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { groundAt } from '../../layout/index.ts'
import { onFlight, type PlacedFlight, type StairPlan } from '../../stairs/index.ts'
import { nearestSixteenth, printLength } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { levelDimension, uprightDimension } from './shapes.ts'
import { onTheWayOut, pairs, stairOuts } from './stair-places.ts'
import { type Depth, depthOf, standing, up, type View } from './upright-shapes.ts'

/** Treads, stringers, landing with its frame, posts and footings as they are seen. */
export function uprightStairs({ stairs, job }: Design, is: View, depth: Depth): readonly Primitive[] {
  return stairs.flatMap((one) => {
    if (depthOf(one.edge, is) !== depth) return []
    // in a section they would stand before what is cut, unless they go away from the house
    if (is === 'section' && one.edge.side !== 'front') return []
    return [...standingStairs(one, is), ...stairFootings(one, job, is), ...landingHeight(one, job, is)]
  })
}

/** From the ground to the boards of the landing, where the stairs are seen from beside; between its posts. */
function landingHeight(
  { platform, members, edge }: StairPlan,
  job: Design['job'],
  is: View,
): readonly Primitive[] {
  const joist = members.find(({ role }) => role === 'landing joist')
  const isBeside = (is === 'front') !== (edge.side === 'front')
  if (platform === null || joist === undefined || !isBeside) return []
  const { corner, down, across, depth, width, level } = platform
  const x = corner.x + (down.x * depth + across.x * width) / 2
  const y = corner.y + (down.y * depth + across.y * width) / 2
  const ground = groundAt(job, x, y)
  const dimension = uprightDimension(joist.id, up(level), up(ground), is === 'front' ? x : y, 0)
  return [{ ...dimension, text: printLength(nearestSixteenth(level - ground)) }]
}

/** How far landing and pad lie from the deck's edge, under the stairs that are seen from beside. */
export function stairsUnder({ stairs }: Design, is: View, y: number, offset: number): readonly Primitive[] {
  return stairs.flatMap((one) => {
    const { near, out, side } = one.edge
    const isBeside = is === 'front' ? Math.abs(out.x) > 0.5 : Math.abs(out.y) > 0.5
    if (!isBeside || (is === 'section' && side !== 'front')) return []
    const at = (away: number) => (is === 'front' ? near.x + out.x * away : near.y + out.y * away)
    return pairs(stairOuts(one, onTheWayOut(one))).map(([from, to], i) =>
      levelDimension(`stair-out-${one.number}-${i + 1}`, at(from), at(to), y, offset),
    )
  })
}

/** Concrete in the ground under the stairs. */
function stairFootings({ footings }: StairPlan, job: Design['job'], is: View): readonly Primitive[] {
  return footings.flatMap((footing) => {
    const { id, x, y, depth, tube, tubeLength, base, baseThickness } = footing
    const bottom = groundAt(job, x, y) - depth
    const foot = base > 0 ? baseThickness : 0
    const part = (across: number, z: number, high: number): Primitive => ({
      kind: 'rect',
      id,
      layer: 'footings',
      x: (is === 'front' ? x : y) - across / 2,
      y: up(z + high),
      w: across,
      h: high,
      weight: 'fine',
      stroke: 'hidden',
      fill: 'none',
    })
    return [part(tube, bottom + foot, tubeLength), ...(foot > 0 ? [part(base, bottom, foot)] : [])]
  })
}

const SHOWN: ReadonlySet<Member['role']> = new Set([
  'tread',
  'landing decking',
  'landing joist',
  'landing beam',
  'landing post',
  'stair header',
  'stair upright',
  'stair strip',
])

function standingStairs(stairs: StairPlan, is: View): readonly Primitive[] {
  const shown = stairs.members.filter(({ role }) => SHOWN.has(role))
  const lines = stairs.flights.map((flight): Primitive => {
    const points = stringerProfile(stairs, flight).map(([down, z]) => {
      const { x, y } = onFlight(flight, down, 0)
      return { x: is === 'front' ? x : y, y: up(z) }
    })
    return {
      kind: 'polygon',
      id: `stringer-${flight.number}-1`,
      layer: 'stairs',
      points,
      weight: 'fine',
      stroke: 'solid',
      fill: 'none',
    }
  })
  const braces = stairs.members.filter(({ role }) => role === 'landing brace')
  return [
    ...lines,
    ...shown.map((member) => standing(member, is, 'stairs')),
    ...braces.flatMap((brace) => slantingBrace(brace, stairs.members, is)),
  ]
}

/** A brace from the foot of one post to the head of another; seen from its end it is left out, for a post hides it. */
function slantingBrace(brace: Member, members: readonly Member[], is: View): readonly Primitive[] {
  const middles = brace.cause.ids.flatMap((id) => {
    const { box } = members.find((one) => one.id === id) ?? {}
    if (box === undefined) return []
    return [is === 'front' ? (box.x0 + box.x1) / 2 : (box.y0 + box.y1) / 2]
  })
  const [foot, head] = middles
  if (foot === undefined || head === undefined || Math.abs(head - foot) < 1) return []
  const wide = sectionOf(brace.product.size).depth
  const [low, high] = [brace.box.z0 + wide / 2, brace.box.z1 - wide / 2]
  const long = Math.hypot(head - foot, high - low)
  const [offX, offZ] = [((high - low) / long) * (wide / 2), ((foot - head) / long) * (wide / 2)]
  const corner = (x: number, z: number, side: 1 | -1) => ({ x: x + side * offX, y: up(z + side * offZ) })
  return [
    {
      kind: 'polygon',
      id: brace.id,
      layer: 'stairs',
      points: [corner(foot, low, 1), corner(head, high, 1), corner(head, high, -1), corner(foot, low, -1)],
      weight: 'fine',
      stroke: 'solid',
      fill: 'wood',
    },
  ]
}

/**
 * A stringer seen from beside, by distance down from the head of its flight and level: notched under its treads, or in one
 * line where they stand between closed ones.
 */
function stringerProfile(
  { patterns, tread }: StairPlan,
  { number, run: whole, treads, topLevel, bottomLevel }: PlacedFlight,
): readonly (readonly [number, number])[] {
  const pattern = patterns.find(({ flight }) => flight === number)
  if (pattern === undefined) return []
  const { rise, run, step, kind, below } = pattern
  const heel = bottomLevel - below
  const isCut = kind === 'cut'
  const under = isCut ? sectionOf(tread.product.size).thickness : 0
  const lower = topLevel - under - (sectionOf('2x12').depth * step) / run
  const steps = Array.from({ length: treads }, (_, i): readonly (readonly [number, number])[] => {
    const level = topLevel - (i + 1) * rise - under
    return [
      [i * run, level],
      [(i + 1) * run, level],
    ]
  }).flat()
  const foot = Math.max(0, ((lower - heel) * run) / rise)
  return [
    ...(isCut
      ? steps
      : ([
          [0, topLevel],
          [whole, bottomLevel + rise],
        ] as const)),
    [whole, heel],
    [Math.min(foot, whole), heel],
    [0, lower],
  ]
}

/** How far to the right the stairs reach in a view; 0 where there are none. */
export function stairsReach({ stairs }: Design, is: View): number {
  const boxes = stairs.flatMap(({ members }) => members.map(({ box }) => (is === 'front' ? box.x1 : box.y1)))
  return Math.max(0, ...boxes)
}
