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
import { ticks } from '../units/index.ts'
import type { Dimensions } from './dimensions.ts'
import type { FreeEdge } from './types.ts'

/** Shorter stretches between two levels are left out: common practice, no source. */
const LEAST = 384

/** Just outside of an edge, where another level would lie. */
const BEYOND = 4

/** A stretch of a level's edge with neither wall nor another level along it. */
export interface FreeStretch extends FreeEdge {
  /** index of the outline's edge */
  readonly index: number
  readonly line: Segment
  /** whether it goes as far as the edge's corner, at its start and at its end */
  readonly whole: readonly [boolean, boolean]
}

/** Stretches of a level's edges that can be seen from outside, with their height over the ground. */
export function freeStretches(
  job: Job,
  d: Dimensions,
  level: Level,
  { levels }: Pick<Layout, 'levels'>,
): readonly FreeStretch[] {
  const others = levels.filter((other) => other !== level)
  return level.edges.flatMap(({ kind, number }, index): readonly FreeStretch[] => {
    if (kind !== 'open') return []
    const edge = edgeAt(level.outline, index)
    const length = lengthOf(edge)
    const outside = movedLeft(edge, -BEYOND)
    const taken = others
      .flatMap(({ outline }) => partsInside(outline, outside))
      .map(({ from, to }) => [shareAt(outside, from), shareAt(outside, to)] as const)
      .sort((a, b) => a[0] - b[0])
    const free: [number, number][] = []
    let at = 0
    for (const [from, to] of [...taken, [1, 1] as const]) {
      if ((from - at) * length >= LEAST) free.push([at, from])
      at = Math.max(at, to)
    }
    return free.map(([from, to]) => {
      const line = { from: pointAt(edge, from), to: pointAt(edge, to) }
      const clearAt = ({ x, y }: PlanePoint) =>
        ticks(Math.round(Math.max(0, d.joistBottom - groundAt(job, x, y))))
      return {
        index,
        line,
        whole: [from === 0, to === 1],
        level: level.number,
        number,
        length: ticks(Math.round((to - from) * length)),
        clear: [clearAt(line.from), clearAt(line.to)],
      }
    })
  })
}
