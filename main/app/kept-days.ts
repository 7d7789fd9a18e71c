import { z } from 'zod'
import type { KeptDay, Methods } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'
import { dayInput } from './day-input.ts'
import { ServiceError } from './service-types.ts'

/** Marks that can be taken back in one product's day. */
const MOST_EARLIER = 60

/** A product's day as it is kept; the same judges what the store gives back. */
export const keptDay = z.strictObject({
  boards: z.string().max(4_000_000),
  day: dayInput,
  earlier: z.array(dayInput).max(MOST_EARLIER),
})

/** Which boards of a job are sawn and what went otherwise, kept with the job from start to start. */
export interface KeptDays {
  readonly read: (input: Methods['day.kept'][0]) => readonly KeptDay[]
  readonly keep: (input: Methods['day.keep'][0]) => Record<string, never>
}

export function keptDays({ jobs, sawDays }: Store): KeptDays {
  return {
    read: ({ jobId }) =>
      sawDays.list(jobId).flatMap(({ planId, text }) => {
        const kept = keptDay.safeParse(JSON.parse(text))
        return kept.success ? [{ planId, ...kept.data }] : []
      }),
    keep: ({ jobId, planId, kept }) => {
      if (jobs.read(jobId) === null) throw new ServiceError('not-found', 'This job is not in the store.')
      if (kept === null) sawDays.remove(jobId, planId)
      else sawDays.write(jobId, planId, JSON.stringify(kept))
      return {}
    },
  }
}
