import { IRC_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt } from '../layout/index.ts'
import { type DeckEdge, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import type { GuardedEdge } from './types.ts'

const REACH = inches(IRC_LIMITS.guardReach.value)
const STEP = inches(12)

/**
 * Every open edge with the greatest drop to the ground within 36 in of it, sampled every foot along it and outward, its
 * ends and the far line included: exact on a plane. IRC 2021 R312.1.1.
 */
export function edgeDrops(job: Job, edges: readonly DeckEdge[]): readonly GuardedEdge[] {
  return edges
    .filter((edge) => !edge.wall)
    .map((edge) => {
      let lowest = Number.POSITIVE_INFINITY
      for (const along of steps(-REACH, edge.length + REACH)) {
        for (const out of steps(0, REACH)) {
          const { x, y } = spotAt(edge, along, out)
          lowest = Math.min(lowest, groundAt(job, x, y))
        }
      }
      const drop = edge.top - lowest
      return { edge, drop, needed: drop > inches(IRC_LIMITS.guardDrop.value) }
    })
}

function steps(from: number, to: number): readonly number[] {
  const count = Math.max(1, Math.ceil((to - from) / STEP))
  return Array.from({ length: count + 1 }, (_, i) => Math.min(to, from + i * STEP))
}
