import { cite, STAIR_INFILL } from '../data/index.ts'
import type { Cause } from '../frame/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { toFeet } from '../units/index.ts'
import type { TaskShare } from './tally.ts'

/** Work on the guard of the deck and of its stairs. */
export function guardTasks(job: Job, guard: GuardPlan | null): readonly TaskShare[] {
  if (guard === null) return []
  const { deckPosts, stairPosts, levelLength, slopedLength, gates, members } = guard
  const because = (rule: string): Cause => ({
    fields: ['guard.where', 'guard.infill', 'guard.postSpacing'],
    ids: members.filter(({ role }) => role === 'guard post').map(({ id }) => id),
    rule,
  })
  const level = toFeet(levelLength)
  const sloped = toFeet(slopedLength)
  return [
    { rateId: 'guard-post', quantity: deckPosts + stairPosts, cause: because('One per post') },
    {
      rateId: 'blocking',
      quantity: members.filter(({ role }) => role === 'guard blocking').length,
      cause: because('One per block behind a guard post'),
    },
    {
      rateId: job.guard.infill === 'panels' ? 'guard-infill-kit' : 'guard-infill-wood',
      quantity: level + STAIR_INFILL.value * sloped,
      cause: because(
        `Length of the guard; beside stairs ${STAIR_INFILL.value} times it (${cite(STAIR_INFILL.source)})`,
      ),
    },
    {
      rateId: 'guard-cap',
      quantity: job.guard.cap === 'none' ? 0 : level + sloped,
      cause: because('Length of the cap'),
    },
    { rateId: 'guard-gate', quantity: gates, cause: because('One per gate') },
  ]
}
