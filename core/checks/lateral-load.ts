import { IRC_LIMITS } from '../data/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'

/** A designer's drawing stands in place of a clause; what it asks is in the drawing. */
const designed: Finding = {
  method: 'prescriptive',
  document: 'Drawing',
  edition: 'as stated',
  clause: 'frame.bracing',
  demand: { value: 1, unit: 'count' },
  capacity: null,
  ratio: null,
  confidence: 'verified',
  lookup: 'stated in the job',
  steps: ['The job states that a licensed designer drew the bracing'],
}

/** Hold-downs that keep the deck from pulling away from the house, IRC 2021 R507.9.2. */
export function checkLateralLoad(context: CheckContext): Check {
  const { job, frame } = context
  if (job.site.attachment === 'freestanding') {
    return judge(job, {
      id: 'lateral-stability',
      title: 'Sideways stability',
      subjects: frame.posts.map((post) => post.id),
      fields: ['site.attachment', 'frame.bracing'],
      prescriptive: job.frame.bracing === 'designed' ? designed : null,
      calculated: null,
      good: () => 'Its bracing is as a licensed designer drew it, as the job states.',
      bad: '',
      uncovered:
        job.frame.bracing === 'knee braces'
          ? 'Knee braces are stated; no table says how many hold a freestanding deck upright sideways'
          : 'No table covers what holds a freestanding deck upright sideways, and the job states no bracing',
      whenUncovered:
        'Outside prescriptive scope: have a licensed designer draw the bracing, or ask the building official for the one that is usual here.',
      remedy: '',
      caution:
        job.frame.bracing === 'designed'
          ? 'Show the drawing with the permit; braces are not in the takeoff.'
          : 'Braces both ways at the end posts are usual.',
    })
  }
  const holdDowns = frame.connectors.filter((one) => one.kind === 'hold-down')
  const count = holdDowns.reduce((sum, one) => sum + one.count, 0)
  const limit = IRC_LIMITS.lateralDevices
  const found = byLimit(limit, { value: limit.value, unit: 'count' }, { value: count, unit: 'count' }, [
    `${limit.value} hold-downs of 1,500 lb within 24 in of the deck's ends, or ${IRC_LIMITS.weakLateralDevices.value} of 750 lb`,
    `Counted in the frame: ${count}`,
  ])
  return judge(job, {
    id: 'lateral-load',
    title: 'Lateral load connection',
    subjects: holdDowns.flatMap((one) => one.at),
    fields: ['site.attachment'],
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () => `${count} hold-downs tie the deck to the house.`,
    bad: `The deck has ${count} hold-downs; ${limit.value} are needed.`,
    uncovered: 'No rule covers the lateral load',
    remedy: `Add hold-downs: ${limit.value} of 1,500 lb, or ${IRC_LIMITS.weakLateralDevices.value} of 750 lb.`,
    caution: '',
  })
}
