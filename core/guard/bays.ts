import { STAIR_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { EdgePart, GuardBay } from './types.ts'

/** Side of a square baluster: common practice, no source. */
export const BALUSTER = inches(1.5)

/** What is lost in sums of places off the grid, ticks. */
const NOISE = 1e-6

/**
 * As few balusters as leave no opening that passes the ball: n is the least with (clear − 1-1/2 n) ÷ (n + 1) under 4 in,
 * or under 4-3/8 in beside stairs, whose balusters stand upright: what passes between them is measured level. IRC 2021
 * R312.1.3.
 */
export function fillBay(job: Job, { from, to }: EdgePart, sloped: boolean): GuardBay {
  const clear = ticks(Math.max(0, Math.floor(to - from + NOISE)))
  if (job.guard.infill === 'panels') return { from, to, clear, balusters: 0, opening: 0 }
  const ball = inches((sloped ? STAIR_LIMITS.stairGuardOpening : STAIR_LIMITS.guardOpening).value)
  const balusters = clear < ball ? 0 : Math.floor((clear - ball) / (BALUSTER + ball)) + 1
  return { from, to, clear, balusters, opening: (clear - BALUSTER * balusters) / (balusters + 1) }
}

/** Where its balusters stand, their middles in the way of the bay. */
export function balusterPlaces({ from, to, balusters }: GuardBay): readonly number[] {
  const opening = (to - from - BALUSTER * balusters) / (balusters + 1)
  return Array.from({ length: balusters }, (_, i) => from + (i + 1) * opening + (i + 0.5) * BALUSTER)
}
