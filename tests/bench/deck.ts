import { auditPlan, type LpEngine, planCuts } from '../../core/cutting/index.ts'
import { cutJobs, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { designed } from '../fixtures/designed.ts'

/** First plans of all products of a job, each audited. */
export function firstPlans(job: unknown, engine: LpEngine): void {
  for (const { cutJob } of cutJobs(designed(job), SAMPLE_BOOK).classes) {
    const plan = planCuts(cutJob, engine, { quick: true })
    if (!plan.ok || auditPlan(cutJob, plan.value).length > 0)
      throw new Error(`no sound plan of ${cutJob.label}`)
  }
}
