import { cents, ok, type Result } from '../../units/index.ts'
import type { Aim, CutJob, CutPlan, Infeasible } from '../types.ts'
import { fitsItsBoards } from './fits.ts'
import { longPoints, type Measure } from './measure.ts'
import type { Nesting } from './nesting.ts'

export type PlanBy = (measure: Measure) => Result<CutPlan, Infeasible>

/**
 * The plan of a job whose pieces may share slanting cuts. The relaxed measure gives the bound and, where its plan fits
 * its boards, a plan. Where that is not proven, or does not fit by a tick or two beside steep cuts, it is the cheapest of
 * it, of the long points and of the safe measure, with that bound: so sharing cuts never makes an order dearer.
 */
export function planNested(job: CutJob, nesting: Nesting, planBy: PlanBy): Result<CutPlan, Infeasible> {
  const relaxed = planBy(nesting.relaxed)
  const shares = nesting.relaxed.mix !== null
  if (!relaxed.ok) return shares ? planBy(longPoints(job)) : relaxed
  const floor = relaxed.value
  const fits = fitsItsBoards(job, floor)
  if (fits && (!shares || weighed(floor) <= floor.bound)) return relaxed
  const others = [...(shares ? [longPoints(job)] : []), ...(fits ? [] : [nesting.safe])].map(planBy)
  const [best] = [...(fits ? [relaxed] : []), ...others]
    .flatMap((planned) => (planned.ok && fitsItsBoards(job, planned.value) ? [planned.value] : []))
    .sort((a, b) => weighed(a) - weighed(b))
  if (best === floor) return relaxed
  return best === undefined ? (others.find((planned) => !planned.ok) ?? relaxed) : ok(bounded(best, floor))
}

function weighed({ cost, preference }: CutPlan): number {
  return cost + preference
}

/** The plan with the bound of the relaxed one, and its certificate. */
function bounded(plan: CutPlan, floor: CutPlan): CutPlan {
  const bound = Math.min(floor.bound, weighed(plan))
  const proven = weighed(plan) <= bound
  return {
    ...plan,
    status: proven ? 'proven optimal' : floor.status === 'stopped' ? 'stopped' : 'feasible',
    bound: cents(bound),
    gap: cents(weighed(plan) - bound),
    why: proven ? floor.why : 'Shared mitres may allow a cheaper order within the gap.',
    certificate: floor.certificate,
    ...(plan.aims === undefined ? {} : { aims: plan.aims.map((aim, k) => atMost(aim, floor.aims?.[k])) }),
    work: {
      ...plan.work,
      columns: plan.work.columns + floor.work.columns,
      nodes: plan.work.nodes + floor.work.nodes,
      patterns: plan.work.patterns + floor.work.patterns,
    },
  }
}

/** The aim with what the relaxed plan proves of it. */
function atMost(aim: Aim, floor: Aim | undefined): Aim {
  return { ...aim, bound: Math.min(aim.value, aim.bound, floor?.bound ?? aim.bound) }
}
