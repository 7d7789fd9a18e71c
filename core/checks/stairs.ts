import type { Job } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { checkLanding } from './stair-landing.ts'
import { checkStairSteps } from './stair-steps.ts'
import { checkStringers, checkTreads } from './stair-stringers.ts'
import { checkHandrail, checkStairWidth } from './stair-width.ts'
import type { Check } from './types.ts'

/** Every rule for stairs; none where the job asks for no stairs. */
export function checkStairs(job: Job, stairs: StairPlan | null): readonly Check[] {
  if (stairs === null) return []
  return [
    checkStairSteps(job, stairs),
    checkStairWidth(job, stairs),
    ...checkStringers(job, stairs),
    ...checkTreads(job, stairs),
    ...(stairs.platform === null ? [] : [checkLanding(job, stairs.platform)]),
    checkHandrail(job, stairs),
  ]
}
