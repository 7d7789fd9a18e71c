import {
  edgeAt,
  lengthOf,
  movedLeft,
  type PlanePoint,
  partsInside,
  pointAt,
  type Segment,
  shareAt,
} from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt, type Layout, type Level } from '../layout/index.ts'
import { inches, ticks } from '../units/index.ts'
import { deckedOutlines } from './decked-outline.ts'
import type { Dimensions } from './dimensions.ts'
import type { FreeEdge } from './types.ts'

/** Shorter stretches between two levels are left out: common practice, no source. */
const LEAST = 384

/** Just outside of an edge, where another level would lie. */
const BEYOND = 4

/** Room for fascia, all of which is 3/4 in thick: what lies nearer to an edge stands under it. */
const ROOM = inches(0.75)

/** A stretch that ends this near a corner goes round it: boards end short of an inside corner. */
const AT_CORNER = inches(1.5)

/** A stretch of a level's edge with neither wall nor a higher level along it. */
export interface FreeStretch extends Omit<FreeEdge, 'over'> {
  /** index of the outline's edge */
  readonly index: number
  readonly line: Segment
  /** whether it goes as far as the edge's corner, at its start and at its end */
  readonly whole: readonly [boolean, boolean]
  /** the lower level whose boards run along it; null over the ground */
  readonly over: Level | null
}

/** A part of an edge, in shares of its length, along which another level lies: null one that hides it. */
interface Taken {
  readonly from: number
  readonly to: number
  readonly over: Level | null
}

/** Stretches of a level's edges that can be seen from outside, with their height over the ground or a lower level. */
export function freeStretches(
  job: Job,
  d: Dimensions,
  level: Level,
  { levels }: Pick<Layout, 'levels'>,
): readonly FreeStretch[] {
  const others = levels
    .filter((other) => other !== level)
    .map((other) =>
      other.deckTop < level.deckTop
        ? {
            over: other,
            shapes: deckedOutlines(job, other, levels).map(({ polygon }) => polygon),
            away: [job.decking.gap + BEYOND, Math.max(job.decking.gap + BEYOND, ROOM)],
          }
        : { over: null, shapes: [other.outline], away: [BEYOND] },
    )
  return level.edges.flatMap(({ kind, number }, index): readonly FreeStretch[] => {
    if (kind !== 'open') return []
    const edge = edgeAt(level.outline, index)
    const length = lengthOf(edge)
    const taken = others.flatMap(({ over, shapes, away }): readonly Taken[] => {
      const parts = away.flatMap((by) => {
        const outside = movedLeft(edge, -by)
        return shapes
          .flatMap((shape) => partsInside(shape, outside))
          .map(({ from, to }): [number, number] => [shareAt(outside, from), shareAt(outside, to)])
      })
      if (over === null) return parts.map(([from, to]) => ({ from, to, over }))
      return joined(parts).map(([from, to]) => ({
        from: from * length < AT_CORNER ? 0 : from,
        to: (1 - to) * length < AT_CORNER ? 1 : to,
        over,
      }))
    })
    return partsOf(taken)
      .filter(({ from, to }) => (to - from) * length >= LEAST)
      .map(({ from, to, over }) => {
        const line = { from: pointAt(edge, from), to: pointAt(edge, to) }
        const clearAt = ({ x, y }: PlanePoint) =>
          ticks(Math.round(Math.max(0, d.joistBottom - (over?.deckTop ?? groundAt(job, x, y)))))
        return {
          index,
          line,
          whole: [from === 0, to === 1],
          over,
          level: level.number,
          number,
          length: ticks(Math.round((to - from) * length)),
          clear: [clearAt(line.from), clearAt(line.to)],
        }
      })
  })
}

/** Parts that meet or overlap, as one. */
function joined(parts: readonly [number, number][]): readonly [number, number][] {
  const whole: [number, number][] = []
  for (const [from, to] of parts.toSorted((a, b) => a[0] - b[0])) {
    const last = whole.at(-1)
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to)
    else whole.push([from, to])
  }
  return whole
}

/** All of an edge that can be seen: what no other level takes, and what runs over lower ones. */
function partsOf(taken: readonly Taken[]): readonly Taken[] {
  const parts: Taken[] = []
  let at = 0
  for (const { from, to, over } of [
    ...taken.toSorted((a, b) => a.from - b.from),
    { from: 1, to: 1, over: null },
  ]) {
    if (from > at) parts.push({ from: at, to: from, over: null })
    if (over !== null && to > at) parts.push({ from: Math.max(at, from), to, over })
    at = Math.max(at, to)
  }
  return parts
}
