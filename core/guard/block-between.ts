import { fromAbove, type Member } from '../frame/index.ts'
import { edgeAt, lengthOf, type Polygon } from '../geometry/index.ts'
import type { Spot } from '../stairs/index.ts'
import { inches } from '../units/index.ts'

/** A block is a 2x on edge. */
const HALF = inches(0.75)

/** Joists stand no further apart: what is further off is not the bay's other side. */
const REACH = inches(36)

/** A shorter block splits where it is nailed: common practice, no source. */
const LEAST = inches(3)

/** What a block is nailed to at its ends. */
const HOLDS: ReadonlySet<Member['role']> = new Set([
  'joist',
  'end joist',
  'rim',
  'ledger',
  'header',
  'hip',
  'blocking',
  'beam ply',
  'landing beam',
  'landing joist',
])

/** A block on the plan: the far ends of its two long edges, each from the end that lies back. */
export interface BlockPlace {
  readonly corners: readonly [Spot, Spot, Spot, Spot]
  /** to the long points, ticks, exact */
  readonly length: number
  /** degrees off square in hundredths, at its left or rear end and at the other, as a member's are told */
  readonly ends: readonly [number, number]
}

/** A stick that blocks may be nailed to, from above. */
export interface Hold extends Pick<Member, 'id' | 'box'> {
  readonly shape: Polygon
}

/** The lumber near an edge's surface that blocks may be nailed to; blocks under a border are cut at posts. */
export function holdsBlocks(members: readonly Member[], top: number): readonly Hold[] {
  return members
    .filter(
      ({ role, box, cause }) =>
        HOLDS.has(role) &&
        box.z1 <= top &&
        box.z1 > top - inches(2) &&
        (role !== 'blocking' || cause.fields[0] !== 'decking.border'),
    )
    .map((member) => ({ id: member.id, box: member.box, shape: fromAbove(member) }))
}

/**
 * The block through a place, from what stands on one side of it to what stands on the other; null where one side is open.
 * @param way a unit vector, along the block
 * @param skip ids of what it goes through, for that is cut there
 */
export function blockThrough(
  holds: readonly Hold[],
  { x, y }: Spot,
  way: Spot,
  skip: readonly string[] = [],
): BlockPlace | null {
  const side = { x: 0 - way.y, y: way.x }
  const reach = ([-1, 1] as const).map((sign) => {
    const from = { x: x + sign * HALF * side.x, y: y + sign * HALF * side.y }
    return [-1, 1].map((on) => firstMet(holds, from, { x: on * way.x, y: on * way.y }, skip))
  })
  const [[a, b], [d, c]] = reach as [[number, number], [number, number]]
  if (Math.max(a, b, c, d) > REACH || Math.min(a + b, c + d) < LEAST) return null
  const at = (along: number, sign: -1 | 1): Spot => ({
    x: x + along * way.x + sign * HALF * side.x,
    y: y + along * way.y + sign * HALF * side.y,
  })
  return {
    corners: [at(-a, -1), at(b, -1), at(c, 1), at(-d, 1)],
    length: Math.max(b, c) + Math.max(a, d),
    ends: isOnward(way) ? [angleOf(d - a), angleOf(b - c)] : [angleOf(b - c), angleOf(d - a)],
  }
}

/** How far from a place, one way, the first member is met. */
function firstMet(holds: readonly Hold[], from: Spot, way: Spot, skip: readonly string[]): number {
  const to = { x: from.x + REACH * 2 * way.x, y: from.y + REACH * 2 * way.y }
  let nearest = lengthOf({ from, to })
  for (const { id, box, shape } of holds) {
    // most lie off the way
    if (box.x0 > Math.max(from.x, to.x) + SLACK || box.x1 < Math.min(from.x, to.x) - SLACK) continue
    if (box.y0 > Math.max(from.y, to.y) + SLACK || box.y1 < Math.min(from.y, to.y) - SLACK) continue
    if (skip.includes(id)) continue
    for (let i = 0; i < shape.length; i += 1) {
      const edge = edgeAt(shape, i)
      const [along, across] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y]
      const cross = way.x * across - way.y * along
      if (Math.abs(cross) < 1e-9 * lengthOf(edge)) continue
      const [dx, dy] = [edge.from.x - from.x, edge.from.y - from.y]
      const share = (dx * way.y - dy * way.x) / cross
      const far = (dx * across - dy * along) / cross
      if (far > 1e-6 && share > -1e-6 && share < 1 + 1e-6 && far < nearest) nearest = far
    }
  }
  return nearest
}

/** Beyond what rounding may put beside a box, ticks. */
const SLACK = 1

/** Whether a way runs from the left or rear end of what lies along it. */
function isOnward({ x, y }: Spot): boolean {
  return Math.abs(x) >= Math.abs(y) ? x > 0 : y > 0
}

/** Positive where the edge at the left of the way, which is the far one, ends further on. */
function angleOf(shift: number): number {
  return Math.round((Math.atan2(shift, 2 * HALF) * 18_000) / Math.PI) + 0
}
