import { auditPlan, type LpEngine, planCuts } from '../../core/cutting/index.ts'
import { design } from '../../core/estimate.ts'
import type { Design } from '../../core/estimate-types.ts'
import { cutJobs, SAMPLE_BOOK } from '../../core/pricing/index.ts'

/** A job that is meant to be valid, up to its takeoff. */
export function designed(job: unknown): Design {
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

/** First plans of all products of a job, each audited. */
export function firstPlans(job: unknown, engine: LpEngine): void {
  for (const { cutJob } of cutJobs(designed(job), SAMPLE_BOOK).classes) {
    const plan = planCuts(cutJob, engine, { quick: true })
    if (!plan.ok || auditPlan(cutJob, plan.value).length > 0)
      throw new Error(`no sound plan of ${cutJob.label}`)
  }
}
