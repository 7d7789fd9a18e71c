import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { groundAt } from '../../layout/index.ts'
import { type StairPlan, spotAt } from '../../stairs/index.ts'
import { inches, nearestSixteenth, printLength } from '../../units/index.ts'
import type { Layer, Primitive } from '../types.ts'
import { uprightDimension } from './shapes.ts'

type View = 'section' | 'front' | 'side'

/** The rails stand so far inside the edge, on the posts' centres. */
const INSIDE = inches(3.25)
const up = (z: number): number => (z === 0 ? 0 : -z)

/** The guard as it is seen level: its posts, and the top of the rail from one end of a stretch to the other. */
export function uprightGuard({ guard, job }: Design, is: View): readonly Primitive[] {
  if (guard === null) return []
  const seen =
    is === 'section' ? guard.stretches.filter(({ edge }) => edge.side === 'front') : guard.stretches
  const ids = new Set(seen.flatMap(({ posts }) => posts.map(({ id }) => id)))
  const posts = guard.members.filter(({ id }) => ids.has(id)).map((member) => standing(member, is, 'guard'))
  const rails = seen.map(({ edge, from, to, number }): Primitive => {
    const [a, b] = [spotAt(edge, from, -INSIDE), spotAt(edge, to, -INSIDE)]
    const z = edge.top + job.guard.height
    const [x1, x2] = is === 'front' ? [a.x, b.x] : [a.y, b.y]
    return {
      kind: 'line',
      id: `guard-cap-${number}-1`,
      layer: 'guard',
      x1,
      y1: up(z),
      x2,
      y2: up(z),
      weight: 'medium',
      stroke: 'solid',
    }
  })
  return [...posts, ...rails]
}

/** Treads, landing with its frame, posts and footings as they are seen, and the line of the nosings down each flight. */
export function uprightStairs({ stairs, job }: Design, is: View): readonly Primitive[] {
  return stairs.flatMap((one) => {
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
])

function standingStairs(stairs: StairPlan, is: View): readonly Primitive[] {
  const shown = stairs.members.filter(({ role }) => SHOWN.has(role))
  const lines = stairs.flights.map(({ number, head, down, run, topLevel, bottomLevel }): Primitive => {
    const [x1, x2] = is === 'front' ? [head.x, head.x + down.x * run] : [head.y, head.y + down.y * run]
    return {
      kind: 'line',
      id: `stringer-${number}-1`,
      layer: 'stairs',
      x1,
      y1: up(topLevel),
      x2,
      y2: up(bottomLevel),
      weight: 'fine',
      stroke: 'centre',
    }
  })
  return [...lines, ...shown.map((member) => standing(member, is, 'stairs'))]
}

/** How far to the right the stairs reach in a view; 0 where there are none. */
export function stairsReach({ stairs }: Design, is: View): number {
  const boxes = stairs.flatMap(({ members }) => members.map(({ box }) => (is === 'front' ? box.x1 : box.y1)))
  return Math.max(0, ...boxes)
}

function standing({ id, box }: Member, is: View, layer: Layer): Primitive {
  const [low, high] = is === 'front' ? [box.x0, box.x1] : [box.y0, box.y1]
  return {
    kind: 'rect',
    id,
    layer,
    x: low,
    y: up(box.z1),
    w: high - low,
    h: box.z1 - box.z0,
    weight: 'fine',
    stroke: 'solid',
    fill: 'wood',
  }
}
