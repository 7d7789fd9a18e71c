import { fromAbove, type Member } from '../frame/index.ts'
import { edgeAt, lengthOf } from '../geometry/index.ts'
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
  /** degrees off square in hundredths, at its two ends */
  readonly ends: readonly [number, number]
}

/** The lumber near an edge's surface that blocks may be nailed to; blocks under a border are cut at posts. */
export function holdsBlocks(members: readonly Member[], top: number): readonly Member[] {
  return members.filter(
    ({ role, box, cause }) =>
      HOLDS.has(role) &&
      box.z1 <= top &&
      box.z1 > top - inches(2) &&
      (role !== 'blocking' || cause.fields[0] !== 'decking.border'),
  )
}

/**
 * The block through a place, from what stands on one side of it to what stands on the other; null where one side is open.
 * @param way a unit vector, along the block
 * @param skip ids of what it goes through, for that is cut there
 */
export function blockThrough(
  holds: readonly Member[],
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
    ends: [angleOf(a - d), angleOf(c - b)],
  }
}

/** How far from a place, one way, the first member is met. */
function firstMet(holds: readonly Member[], from: Spot, way: Spot, skip: readonly string[]): number {
  const to = { x: from.x + REACH * 2 * way.x, y: from.y + REACH * 2 * way.y }
  const met = holds.flatMap((member) => {
    if (skip.includes(member.id)) return []
    const shape = fromAbove(member)
    return shape.flatMap((_, i) => {
      const edge = edgeAt(shape, i)
      const cross = way.x * (edge.to.y - edge.from.y) - way.y * (edge.to.x - edge.from.x)
      if (Math.abs(cross) < 1e-9 * lengthOf(edge)) return []
      const [dx, dy] = [edge.from.x - from.x, edge.from.y - from.y]
      const along = (dx * (edge.to.y - edge.from.y) - dy * (edge.to.x - edge.from.x)) / cross
      const share = (dx * way.y - dy * way.x) / cross
      return along > 1e-6 && share > -1e-6 && share < 1 + 1e-6 ? [along] : []
    })
  })
  return Math.min(lengthOf({ from, to }), ...met)
}

function angleOf(shift: number): number {
  return Math.round((Math.atan2(shift, 2 * HALF) * 18_000) / Math.PI) + 0
}
