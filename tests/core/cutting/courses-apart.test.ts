import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, planCuts } from '../../../core/cutting/index.ts'
import { type Cents, inches, ticks } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'
import { jobOf, pointAt, runOf, stockOf } from './jobs.ts'

/** 35 courses of 32 ft 1 in over joists 16 in apart, whose cheapest flow has neighbours jointed at one joist in every order. */
function courses(): CutJob {
  const length = ticks(12_320)
  const joists = Array.from({ length: 21 }, (_, k) => ticks(1056 + k * inches(16)))
  const points = joists.map((at) => pointAt(at, { cost: 220 as Cents, cap: 18 }))
  const supports = [56, 544, ...joists, 11_808, 12_264].map((at) => ticks(at))
  const run = runOf('decking', 35, length, points, { supports, minSupports: 3, neighboursApart: true })
  return jobOf({ stock: stockOf({ 12: 1572, 16: 2096, 20: 2790 }), runs: [run] })
}

describe('courses whose neighbours are never jointed at one joist', () => {
  it('have a first plan after a few searches, though the cheapest flow has no order', () => {
    const job = courses()
    const plan = planCuts(job, engine, { quick: true })
    if (!plan.ok) throw new Error(plan.error.message)
    expect(auditPlan(job, plan.value)).toEqual([])
    // 10,600 nodes once, and 37 s
    expect(plan.value.work.nodes).toBeLessThan(100)
    expect(plan.value.cost - plan.value.bound).toBeLessThan(0.005 * plan.value.cost)
  })

  it('stop soon once the work allowed is done', () => {
    const job = courses()
    const plan = planCuts(job, engine, { limits: { nodes: 20 } })
    if (!plan.ok) throw new Error(plan.error.message)
    expect(auditPlan(job, plan.value)).toEqual([])
    expect(plan.value.work.nodes).toBeLessThan(500)
  })

  it.each([0, 1, 5, 20])(
    'have a plan that keeps the rule when they are stopped after %i questions',
    (most) => {
      const job = courses()
      let asked = 0
      const plan = planCuts(job, engine, { stop: () => ++asked > most })
      if (!plan.ok) throw new Error(plan.error.message)
      expect(auditPlan(job, plan.value)).toEqual([])
    },
  )
})
