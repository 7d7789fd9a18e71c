import type { Member } from '../frame/index.ts'
import type { Fault, FieldPath, Job, StatedStairs } from '../job/index.ts'
import { furtherStairs, stairsOf } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { fail, ok, type Result } from '../units/index.ts'
import { layFlights } from './lay-flights.ts'
import { stairsInTheWay } from './stairs-in-the-way.ts'
import type { StairPlan } from './types.ts'

/**
 * Every stair that a job asks for, in their order; or the named faults that keep them from being built.
 * @param decking boards of the deck as they are laid
 */
export function layStairs(
  job: Job,
  layout: Layout,
  decking: readonly Member[],
): Result<readonly StairPlan[], readonly Fault[]> {
  const plans: StairPlan[] = []
  for (const stated of stairsOf(job)) {
    const flights = plans.reduce((sum, plan) => sum + plan.flights.length, 0)
    const laid = layFlights(job, layout, decking, stated, flights + 1)
    if (!laid.ok) return fail([asStated(stated, laid.error)])
    plans.push(withOwnFields(stated, laid.value))
  }
  const clashes = stairsInTheWay(layout, plans)
  return clashes.length > 0 ? fail(clashes) : ok(plans)
}

function asStated({ branch }: StatedStairs, fault: Fault): Fault {
  return { ...fault, path: furtherStairs(branch, fault.path) }
}

/** The plan with its causes at the fields that state these stairs, not the first. */
function withOwnFields({ branch }: StatedStairs, plan: StairPlan): StairPlan {
  if (branch === 'stairs') return plan
  const own = <Thing extends { readonly cause: { readonly fields: readonly FieldPath[] } }>(
    thing: Thing,
  ): Thing => ({
    ...thing,
    cause: { ...thing.cause, fields: thing.cause.fields.map((path) => furtherStairs(branch, path)) },
  })
  return {
    ...own(plan),
    members: plan.members.map(own),
    connectors: plan.connectors.map(own),
    footings: plan.footings.map(own),
  }
}
