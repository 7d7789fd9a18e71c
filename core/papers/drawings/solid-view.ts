import type { Design } from '../../estimate-types.ts'
import type { Box, Footing, Member, PlanPoint } from '../../frame/index.ts'
import { postsMiddle } from '../../guard/index.ts'
import { groundAt } from '../../layout/index.ts'
import { spotAt } from '../../stairs/index.ts'
import { inches } from '../../units/index.ts'
import type { Drawing, Layer, Primitive } from '../types.ts'
import { drawingOf } from './shapes.ts'
import { fromBehind } from './solid-order.ts'

/** Quarter turns about the upright: 0 looks from the yard's right corner, 1 from its left one, 2 and 3 over the house. */
export type Turn = 0 | 1 | 2 | 3

type Point = readonly [number, number, number]

/** Isometric: level lines fall and rise by 30 degrees. */
const ACROSS = Math.cos(Math.PI / 6)
const DOWN = 1 / 2
/** How much of the house and of the ground is drawn. */
const WALL_UP = inches(30)
const AROUND = inches(30)
const SIDES_OF_TUBE = 12
/** The lower rail stands so far over the decking. */
const BOTTOM_RAIL = inches(4)

/** A prism: its shape from above, and from where to where it stands. */
export interface Solid {
  readonly id: string
  readonly layer: Layer
  readonly plan: readonly PlanPoint[]
  readonly z0: number
  readonly z1: number
  readonly isWood: boolean
}

/**
 * The deck from above one of its corners, without vanishing points, so that equal lengths along one way stay equal: every
 * board as the prism it is, what lies behind drawn first. Cut stringers and knee braces are left out: they slope; rails are lines.
 */
export function solidView(design: Design, turn: Turn = 0): Drawing {
  const turned = (point: PlanPoint): PlanPoint => turnBy(point, turn)
  const solids = solidsOf(design).map((solid) => ({ ...solid, plan: solid.plan.map(turned) }))
  const primitives: readonly Primitive[] = [
    ...ground(design, turned),
    ...walls(design, turned),
    ...fromBehind(solids).flatMap(facesOf),
    ...rails(design, turned),
  ]
  return drawingOf('solid-view', 'The deck from above', primitives, inches(6))
}

function turnBy({ x, y }: PlanPoint, turn: Turn): PlanPoint {
  if (turn === 0) return { x, y }
  if (turn === 1) return { x: y, y: -x }
  return turn === 2 ? { x: -x, y: -y } : { x: -y, y: x }
}

function onPage([x, y, z]: Point): { readonly x: number; readonly y: number } {
  return { x: (x - y) * ACROSS, y: (x + y) * DOWN - z }
}

function solidsOf({ frame, stairs, guard }: Design): readonly Solid[] {
  const guardIds = new Set(guard?.members.map(({ id }) => id))
  const built = stairs.flatMap(({ members }) => members)
  const stairIds = new Set(built.map(({ id }) => id))
  const members = [...frame.members, ...built, ...(guard?.members ?? [])]
  const decking = frame.members.filter(({ role }) => role === 'decking')
  return [
    ...frame.footings.map(tube),
    ...members.filter(isDrawn).flatMap((member): readonly Solid[] => {
      const { id, box, plan } = member
      const layer = guardIds.has(id) ? 'guard' : stairIds.has(id) ? 'stairs' : layerOf(member)
      const solid = { id, layer, plan: plan ?? cornersOf(box), z0: box.z0, z1: box.z1, isWood: true }
      // a post goes up through the decking: under it joists stand before it, over it nothing of the frame does
      const level = decking.find((course) => goesThrough(box, course.box))?.box.z0
      return level === undefined
        ? [solid]
        : [
            { ...solid, z1: level },
            { ...solid, z0: level },
          ]
    }),
  ]
}

/** Sloping members are no prisms, rails are drawn as lines, and blocks behind posts are not seen. */
function isDrawn({ role }: Member): boolean {
  return !NOT_DRAWN.has(role)
}

const NOT_DRAWN: ReadonlySet<Member['role']> = new Set([
  'stringer',
  'knee brace',
  'landing brace',
  'guard rail',
  'guard cap',
  'guard blocking',
])

function goesThrough(a: Box, b: Box): boolean {
  return a.z0 < b.z0 && a.z1 > b.z1 && a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0
}

function layerOf({ role }: Member): Layer {
  if (role === 'beam ply') return 'beams'
  if (role === 'post') return 'posts'
  return role === 'decking' ? 'decking' : 'joists'
}

function cornersOf({ x0, x1, y0, y1 }: Box): readonly PlanPoint[] {
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]
}

/** What of a footing stands over the ground. */
function tube({ id, x, y, tube: across, ground: z0, topOfConcrete: z1 }: Footing): Solid {
  const plan = Array.from({ length: SIDES_OF_TUBE }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES_OF_TUBE
    return { x: x + (across / 2) * Math.cos(angle), y: y + (across / 2) * Math.sin(angle) }
  })
  return { id, layer: 'footings', plan, z0, z1, isWood: false }
}

/** The faces of a prism that are seen: its top, and the sides that look this way. */
function facesOf({ id, layer, plan, z0, z1, isWood }: Solid): readonly Primitive[] {
  const face = (points: readonly Point[], fill: 'wood' | 'shade' | 'dark'): Primitive => ({
    kind: 'polygon',
    id,
    layer,
    points: points.map(onPage),
    weight: 'fine',
    stroke: 'solid',
    fill: isWood ? fill : 'ground',
  })
  const area = plan.reduce((sum, a, i) => sum + cross(a, plan[(i + 1) % plan.length] ?? a), 0)
  const sides = plan.flatMap((a, i): readonly Primitive[] => {
    const b = plan[(i + 1) % plan.length] ?? a
    // outward: at the right of the way round that has the shape at its left
    const out = { x: (b.y - a.y) * Math.sign(area), y: (a.x - b.x) * Math.sign(area) }
    if (out.x + out.y <= 0) return []
    const points: readonly Point[] = [
      [a.x, a.y, z0],
      [b.x, b.y, z0],
      [b.x, b.y, z1],
      [a.x, a.y, z1],
    ]
    return [face(points, out.x > out.y ? 'dark' : 'shade')]
  })
  return [
    ...sides,
    face(
      plan.map(({ x, y }): Point => [x, y, z1]),
      'wood',
    ),
  ]
}

function cross(a: PlanPoint, b: PlanPoint): number {
  return a.x * b.y - b.x * a.y
}

/** The rails of the guard from post to post, and those beside stairs, as lines: top and bottom. */
function rails({ guard, job }: Design, turned: (point: PlanPoint) => PlanPoint): readonly Primitive[] {
  if (guard === null) return []
  const line = (id: string, ends: readonly (PlanPoint & { readonly z: number })[]): Primitive => {
    const [a, b] = ends.map((end) => {
      const { x, y } = turned(end)
      return onPage([x, y, end.z])
    })
    const look = { kind: 'line', id, layer: 'guard', stroke: 'solid', weight: 'medium' } as const
    return { ...look, x1: a?.x ?? 0, y1: a?.y ?? 0, x2: b?.x ?? 0, y2: b?.y ?? 0 }
  }
  const level = guard.stretches.flatMap((stretch) =>
    [job.guard.height, BOTTOM_RAIL].map((up) => {
      const { edge, from, to, number } = stretch
      const ends = [from, to].map((at) => ({
        ...spotAt(edge, at, -postsMiddle(job, stretch)),
        z: edge.top + up,
      }))
      return line(`guard-cap-${number}-1`, ends)
    }),
  )
  const climbing = guard.members.flatMap(({ id, slope }) =>
    slope === undefined || id.endsWith('-top') ? [] : [line(id, [slope.from, slope.to])],
  )
  return [...level, ...climbing]
}

/** A piece of the ground under the deck and around it. */
function ground({ job, layout }: Design, turned: (point: PlanPoint) => PlanPoint): readonly Primitive[] {
  const corners = layout.levels.flatMap(({ outline }) => outline)
  const xs = corners.map(({ x }) => x)
  const ys = corners.map(({ y }) => y)
  const box = {
    x0: Math.min(...xs) - AROUND,
    x1: Math.max(...xs) + AROUND,
    y0: job.site.attachment === 'freestanding' ? Math.min(...ys) - AROUND : 0,
    y1: Math.max(...ys) + AROUND,
  }
  const points = cornersOf({ ...box, z0: 0, z1: 0 }).map((corner): { x: number; y: number } => {
    const { x, y } = turned(corner)
    return onPage([x, y, groundAt(job, corner.x, corner.y)])
  })
  return [
    {
      kind: 'polygon',
      id: 'ground',
      layer: 'house',
      points,
      weight: 'fine',
      stroke: 'solid',
      fill: 'ground',
    },
  ]
}

/** The walls of the house that stand behind the deck as it is seen. */
function walls({ job, layout }: Design, turned: (point: PlanPoint) => PlanPoint): readonly Primitive[] {
  return layout.edges.flatMap(({ kind, from, to }): readonly Primitive[] => {
    if (kind !== 'wall') return []
    const [a, b] = [turned(from), turned(to)]
    // the house lies at the right of the edge; where that is this side, its wall would hide the deck
    if (b.y - a.y - (b.x - a.x) > 0) return []
    const top = layout.deckTop + WALL_UP
    const low = Math.min(groundAt(job, from.x, from.y), groundAt(job, to.x, to.y))
    const points = (
      [
        [a.x, a.y, low],
        [b.x, b.y, low],
        [b.x, b.y, top],
        [a.x, a.y, top],
      ] as const
    ).map(onPage)
    const look = { id: 'house-wall', layer: 'house', weight: 'fine', stroke: 'solid' } as const
    return [{ kind: 'polygon', ...look, points, fill: 'house' }]
  })
}
