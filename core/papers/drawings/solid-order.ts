import type { Solid } from './solid-view.ts'

interface Room {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

/** Boards that lie against each other do so to a rounding, ticks. */
const TOUCH = 0.5

/**
 * Prisms in the order in which they are drawn, seen along (−1, −1, −1): a prism follows every one that it may hide.
 * Where prisms hide each other in a ring, or run into each other, the one whose middle lies farther off comes first.
 */
export function fromBehind(solids: readonly Solid[]): readonly Solid[] {
  const rooms = solids.map(roomOf)
  const after: number[][] = solids.map(() => [])
  const waiting = solids.map(() => 0)
  for (let i = 0; i < rooms.length; i += 1) {
    for (let j = i + 1; j < rooms.length; j += 1) {
      const [a, b] = [rooms[i], rooms[j]]
      if (a === undefined || b === undefined || !overlap(a, b)) continue
      const [hidesB, hidesA] = [mayHide(a, b), mayHide(b, a)]
      if (hidesB === hidesA) continue
      const [first, second] = hidesB ? [j, i] : [i, j]
      after[first]?.push(second)
      waiting[second] = (waiting[second] ?? 0) + 1
    }
  }
  const far = rooms.map(({ x0, x1, y0, y1, z0, z1 }) => x0 + x1 + y0 + y1 + z0 + z1)
  const left = new Set(solids.keys())
  const order: Solid[] = []
  while (left.size > 0) {
    const free = [...left].filter((i) => waiting[i] === 0)
    const next = (free.length > 0 ? free : [farthestOf(left, far)]).toSorted(
      (a, b) => (far[a] ?? 0) - (far[b] ?? 0) || a - b,
    )
    for (const i of next) {
      const solid = solids[i]
      if (solid !== undefined) order.push(solid)
      left.delete(i)
      for (const j of after[i] ?? []) waiting[j] = (waiting[j] ?? 0) - 1
    }
  }
  return order
}

/** Of those left the one farthest off. */
function farthestOf(left: ReadonlySet<number>, far: readonly number[]): number {
  return [...left].reduce((best, i) => ((far[i] ?? 0) < (far[best] ?? 0) ? i : best))
}

function roomOf({ plan, z0, z1 }: Solid): Room {
  const xs = plan.map(({ x }) => x)
  const ys = plan.map(({ y }) => y)
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys), z0, z1 }
}

/** Whether a stands before b somewhere: it does not where it ends behind it along any of the three ways. */
function mayHide(a: Room, b: Room): boolean {
  return a.x1 > b.x0 + TOUCH && a.y1 > b.y0 + TOUCH && a.z1 > b.z0 + TOUCH
}

/** Whether the two are seen over each other: sight runs along (1, 1, 1), so differences of two ways do not change on it. */
function overlap(a: Room, b: Room): boolean {
  return (
    a.x0 - a.y1 < b.x1 - b.y0 &&
    b.x0 - b.y1 < a.x1 - a.y0 &&
    a.x0 - a.z1 < b.x1 - b.z0 &&
    b.x0 - b.z1 < a.x1 - a.z0 &&
    a.y0 - a.z1 < b.y1 - b.z0 &&
    b.y0 - b.z1 < a.y1 - a.z0
  )
}
