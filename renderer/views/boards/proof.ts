import type { CutPlan } from '../../../core/cutting/index.ts'
import type { Job } from '../../../core/job/index.ts'
import { cents, printMoney } from '../../../core/units/index.ts'

/** How good a plan is, in one line. */
export function proofOf(plan: CutPlan, job: Job | null = null): string {
  const wish = job?.cutting.objective ?? 'least cost'
  if (wish !== 'least cost' && plan.status === 'feasible')
    return `Chosen for ${wish}: at most ${printMoney(cents(plan.gap))} above the least cost.`
  switch (plan.status) {
    case 'proven optimal':
      return 'Proven: no order of these lengths costs less.'
    case 'feasible':
      return `No order can cost more than ${printMoney(cents(plan.gap))} less than this one.`
    case 'stopped':
      return `Stopped before its proof: up to ${printMoney(cents(plan.gap))} might still be saved.`
  }
}
