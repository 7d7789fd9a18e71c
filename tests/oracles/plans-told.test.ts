import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { auditPlan, type CutPlan, planCuts } from '../../core/cutting/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { arbitraryCutJob } from './arbitrary-cut-job.ts'

const engine = await loadHighs()
const total = ({ cost, preference }: CutPlan): number => cost + preference

describe('plans told while a search goes on', () => {
  it('are sound, each better than the one before, and none better than the last', () => {
    let told = 0
    fc.assert(
      fc.property(arbitraryCutJob, (job) => {
        const plans: CutPlan[] = []
        const result = planCuts(job, engine, { onPlan: (plan) => plans.push(plan) })
        for (const [index, plan] of plans.entries()) {
          expect(auditPlan(job, plan)).toEqual([])
          const before = plans[index - 1]
          if (before !== undefined) expect(total(plan)).toBeLessThanOrEqual(total(before))
          expect(result.ok && total(result.value)).toBeLessThanOrEqual(total(plan))
        }
        told += plans.length
      }),
      { numRuns: Number(process.env.FC_RUNS ?? 60) },
    )
    expect(told).toBeGreaterThan(0)
  })

  it('change nothing of the plan that is made', () => {
    fc.assert(
      fc.property(arbitraryCutJob, (job) => {
        const watched = planCuts(job, engine, { onPlan: () => undefined })
        expect(JSON.stringify(watched)).toBe(JSON.stringify(planCuts(job, engine)))
      }),
      { numRuns: Number(process.env.FC_RUNS ?? 40) },
    )
  })
})
