import { describe, expect, it } from 'vitest'
import { type CutJob, type DayState, planCuts, replan } from '../../../../core/cutting/index.ts'
import { type Cents, feet, share } from '../../../../core/units/index.ts'
import { loadHighs } from '../../../../main/workers/lp/highs.ts'
import { jobOf, pointAt, runOf, stockOf } from '../jobs.ts'

const engine = await loadHighs()

/** Two plies of 16 ft and a piece of 11 ft from boards of 24 ft: a joint of 2 dollars spares a board. */
const job: CutJob = jobOf({
  stock: stockOf({ 24: 3000 }),
  pieces: [{ id: 'p', mark: 'P', length: feet(11) }],
  runs: [runOf('beam', 2, feet(16), [pointAt(feet(10), { cost: 200 as Cents })])],
})

const bought: DayState = {
  bought: 'all',
  sawn: [],
  miscuts: [],
  culls: [],
  yard: [],
  spares: [],
  refund: share(0),
}

function finished(day: DayState) {
  const plan = planCuts(job, engine)
  if (!plan.ok) throw new Error(plan.error.message)
  const again = replan(job, plan.value, day, engine)
  if (!again.ok) throw new Error(JSON.stringify(again.error))
  return { plan: plan.value, again: again.value }
}

describe('boards that the plan did not reckon with', () => {
  it('leave the plan as it is where there are none', () => {
    const { plan, again } = finished(bought)
    expect(plan.boards).toHaveLength(2)
    expect(again.joints).toEqual(plan.joints)
    expect(again.joints).toHaveLength(1)
    expect(again.proven).toBe(true)
  })

  it('spare a joint where one lies there, bought and paid for', () => {
    const { again } = finished({ ...bought, spares: [{ stockId: '24 ft', count: 1 }] })
    expect(again.joints).toEqual([])
    expect(again.money).toMatchObject({ now: 0, joints: -200, extra: -200 })
    expect(again.proven).toBe(true)
  })

  it('spare a joint where the yard now asks less for one than the joint costs', () => {
    const yard = [{ stockId: '24 ft', left: null, price: 150 as Cents }]
    const { again } = finished({ ...bought, yard })
    expect(again.joints).toEqual([])
    expect(again.money).toMatchObject({ now: 150, joints: -200, extra: -50 })
    expect(again.proven).toBe(true)
  })

  it('leave the plan as it is where the yard asks more', () => {
    const yard = [{ stockId: '24 ft', left: 5, price: 3001 as Cents }]
    const { plan, again } = finished({ ...bought, yard })
    expect(again.joints).toEqual(plan.joints)
    expect(again.changed).toEqual([])
    expect(again.proven).toBe(true)
  })
})
