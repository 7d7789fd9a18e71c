import { STAIR_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { inches, type Ticks } from '../units/index.ts'
import type { GuardBay } from './types.ts'

/** Side of a square baluster: common practice, no source. */
const BALUSTER = inches(1.5)

/**
 * As few balusters as leave no opening that passes the ball: n is the least with (clear − 1-1/2 n) ÷ (n + 1) under 4 in,
 * or under 4-3/8 in beside stairs. IRC 2021 R312.1.3.
 */
export function fillBay(job: Job, clear: Ticks, sloped: boolean): GuardBay {
  if (job.guard.infill === 'panels') return { clear, balusters: 0, opening: 0 }
  const ball = inches((sloped ? STAIR_LIMITS.stairGuardOpening : STAIR_LIMITS.guardOpening).value)
  const balusters = clear < ball ? 0 : Math.floor((clear - ball) / (BALUSTER + ball)) + 1
  return { clear, balusters, opening: (clear - BALUSTER * balusters) / (balusters + 1) }
}
