import type { Job } from '../job/index.ts'

/**
 * Six figures that tell one state of a job from another, for papers that were given no revision: FNV-1a over the job
 * with every default filled in. Two papers with the same figures show the same deck.
 */
export function fingerprint(job: Job): string {
  let hash = 0x811c9dc5
  for (const character of JSON.stringify(job)) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193) >>> 0
  }
  return hash.toString(16).padStart(8, '0').slice(0, 6)
}
