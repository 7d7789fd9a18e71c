import { IRC_LIMITS } from '../data/index.ts'
import { isInside } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt, type Level } from '../layout/index.ts'
import { type DeckEdge, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { besideHigher } from './beside-higher.ts'
import type { GuardedEdge } from './types.ts'

const REACH = inches(IRC_LIMITS.guardReach.value)
const STEP = inches(12)

/**
 * Every open edge with the greatest drop within 36 in of it, to the ground or to the level that lies there, sampled every foot along it and outward, its
 * ends and the far line included: exact on a plane. IRC 2021 R312.1.1.
 */
export function edgeDrops(
  job: Job,
  edges: readonly DeckEdge[],
  levels: readonly Level[],
): readonly GuardedEdge[] {
  return edges
    .filter((edge) => !edge.wall && !isUnderLevel(edge, levels))
    .map((edge) => {
      let lowest = Number.POSITIVE_INFINITY
      for (const along of steps(-REACH, edge.length + REACH)) {
        for (const out of steps(0, REACH)) {
          const { x, y } = spotAt(edge, along, out)
          lowest = Math.min(lowest, surfaceAt(job, levels, x, y))
        }
      }
      const drop = edge.top - lowest
      return { edge, drop, needed: drop > inches(IRC_LIMITS.guardDrop.value) }
    })
}

/** What one would fall on: the highest level over a place, else the ground. */
function surfaceAt(job: Job, levels: readonly Level[], x: number, y: number): number {
  if (levels.length < 2) return groundAt(job, x, y)
  const over = levels.filter(({ outline }) => isInside(outline, { x, y })).map(({ deckTop }) => deckTop)
  return over.length === 0 ? groundAt(job, x, y) : Math.max(...over)
}

/** Whether a level as high or higher lies along the whole of an edge, but for what no one falls through. */
function isUnderLevel(edge: DeckEdge, levels: readonly Level[]): boolean {
  let reached = 0
  for (const { from, to } of besideHigher(edge, levels))
    if (from <= reached + GAP) reached = Math.max(reached, to)
  return reached >= edge.length - GAP
}

/** Between two levels, or beside one: a ball of 4 in does not pass (IRC 2021 R312.1.3). */
const GAP = inches(3)

function steps(from: number, to: number): readonly number[] {
  const count = Math.max(1, Math.ceil((to - from) / STEP))
  return Array.from({ length: count + 1 }, (_, i) => Math.min(to, from + i * STEP))
}
