import type { GuardPlan } from '../guard/index.ts'
import { furtherStairs, type Job, jobOfStairs, titleOfStairs } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import type { CheckContext } from './context.ts'
import { checkStairFloor } from './stair-floor.ts'
import { checkStairFootings } from './stair-footings.ts'
import { checkStairHangs } from './stair-hangs.ts'
import { checkStairHead } from './stair-head.ts'
import { checkLanding } from './stair-landing.ts'
import { checkPad } from './stair-pad.ts'
import { checkStairSteps } from './stair-steps.ts'
import { checkStringers, checkTreads } from './stair-stringers.ts'
import { checkHandrail, checkStairWidth } from './stair-width.ts'
import type { Check } from './types.ts'

/** Every rule for one of the stairs. */
export function checkStairs(
  context: CheckContext,
  stairs: StairPlan,
  guard: GuardPlan | null,
): readonly Check[] {
  const { branch, number } = stairs
  return [
    ...checksOf(jobOfStairs(context.job, branch), stairs, guard),
    ...checkStairHead(context, stairs),
    ...checkStairHangs(context, stairs),
    ...checkStairFootings(context, stairs),
    ...(stairs.pad === null ? [] : [checkPad(context, stairs, stairs.pad)]),
  ].map((check) => ({
    ...check,
    id: number === 1 ? check.id : `${check.id}-of-${number}`,
    title: titleOfStairs(branch, check.title),
    fields: check.fields.map((path) => furtherStairs(branch, path)),
  }))
}

function checksOf(job: Job, stairs: StairPlan, guard: GuardPlan | null): readonly Check[] {
  return [
    checkStairSteps(job, stairs),
    checkStairWidth(job, stairs),
    ...checkStringers(job, stairs),
    ...checkTreads(job, stairs),
    ...(stairs.platform === null ? [] : [checkLanding(job, stairs.platform, stairs.members)]),
    ...(stairs.floor === null ? [] : [checkStairFloor(job, stairs, stairs.floor)]),
    checkHandrail(job, stairs, guard),
  ]
}
