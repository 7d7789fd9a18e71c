import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan, planCuts } from '../../core/cutting/index.ts'
import { feet, ticks } from '../../core/units/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { jobOf, runOf, stockOf } from '../core/cutting/jobs.ts'
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

  it('grow no dearer where a rule parts the search and each part begins with a poor plan', () => {
    // one length may be bought: an 18 and an offcut from a pair cost 30, both pieces from the pair 28
    const job = jobOf({
      kerf: ticks(0),
      stock: [
        { ...stockOf({ 18: 2 })[0], breaks: [{ from: 3, price: 40 }] },
        { ...stockOf({ 26: 14 })[0], offcut: true, supply: 3, pack: 2, minimum: 2 },
        { ...stockOf({ 27: 23 })[0], supply: 1 },
      ] as CutJob['stock'],
      runs: [runOf('r', 1, feet(8), []), runOf('q', 1, feet(20), [])],
      maxLengths: 1,
    })
    const costs: number[] = []
    const result = planCuts(job, engine, { onPlan: (plan) => costs.push(total(plan)) })
    expect(result.ok && result.value.cost).toBe(28)
    expect(costs).toEqual(costs.toSorted((a, b) => b - a))
    expect(costs.at(-1)).toBe(28)
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
