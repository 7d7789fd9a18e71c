import type { CutJob, Mitres } from '../types.ts'
import type { KindKey, Mix } from './mix.ts'

/**
 * How pieces are told as lengths that add up on a board: Σ (length − less + kerf) ≤ usable length − held + kerf, where
 * the mix says what is held. Without a mix nothing is less and nothing held, and every piece takes its long points.
 */
export interface Measure {
  readonly kerf: number
  /** what a piece's ends let its neighbours have of its length */
  readonly less: (length: number, mitres: Mitres | undefined) => number
  readonly kindOf: (length: number, mitres: Mitres | undefined) => KindKey
  readonly mix: Mix | null
  /** of a bound: what fits by it may be a little too long for its board */
  readonly isRelaxed?: true
}

/** Every piece to its long points. */
export function longPoints(job: CutJob, kerf: number = job.kerf): Measure {
  return { kerf, less: () => 0, kindOf: () => '', mix: null }
}
