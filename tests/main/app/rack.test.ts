import { afterEach, expect, test } from 'vitest'
import type { Estimate } from '../../../core/estimate-types.ts'
import { feet, inches, share } from '../../../core/units/index.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { openServices, REAL_WORKER, type TestServices } from './test-services.ts'

const statement = smallJob('12 ft', { name: 'Wren Court', cutting: { keepOffcutsFrom: '12 in' } })
const product = { size: '2x8', species: 'SP', grade: 'No.2', treatment: 'treated' } as const
const day = {
  bought: 'all',
  sawn: [],
  miscuts: [],
  culls: [],
  yard: [],
  spares: [],
  refund: share(0),
} as const

let services: TestServices
afterEach(() => services.close())

async function estimate(jobId?: string): Promise<Estimate> {
  const { result } = await services.call('estimate.run', { edit: 1, statement, jobId })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.estimate
}
const planId = (made: Estimate) =>
  made.plans.find((planned) => planned.product.size === '2x8')?.plan.jobId ?? ''

test('widths are compared with the rack: the row at the job’s width is the estimate, before and after', async () => {
  services = await openServices({ worker: REAL_WORKER })
  const width = feet(12)
  const range = { edit: 1, statement, from: width, to: width, step: inches(6) }
  const rowNow = async () => {
    services.events.length = 0
    await services.call('compare.run', range)
    const rows = services.events.flatMap(({ event, data }) => (event === 'compare.row' ? [data] : []))
    return (rows.at(-1) as { row: { cost: number; lumber: number } }).row
  }
  const before = await rowNow()
  expect(before.cost).toBe((await estimate()).pricing?.totals.cost)
  await services.call('offcuts.add', { product, length: width, count: 2, fromJob: 'the shed' })
  const after = await rowNow()
  const made = await estimate()
  expect(after.cost).toBe(made.pricing?.totals.cost)
  expect(after.lumber).toBe(made.plans.reduce((sum, { plan }) => sum + plan.cost, 0))
  expect(after.cost).toBeLessThan(before.cost)
})

test('a job that was cut keeps its plan: its own offcuts are not offered to it, what it took from the rack is', async () => {
  services = await openServices({ worker: REAL_WORKER })
  const { id } = await services.call('jobs.create', { statement })
  await services.call('offcuts.add', { product, length: feet(12), count: 1, fromJob: 'the shed' })
  const before = await estimate(id)
  const name = planId(before)
  const taken = await services.call('offcuts.takeFromPlan', { jobId: id })
  expect(taken.used).toBe(1)
  expect(taken.added).toBeGreaterThan(0)
  expect(await estimate(id)).toEqual(before)
  const rest = await services.call('day.replan', { statement, jobId: id, planId: name, day })
  if (!rest.ok) throw new Error(rest.reasons.join(' '))
  expect(rest.plan).toEqual(before.plans.find(({ plan }) => plan.jobId === name)?.plan)
  // another job of the same kind has the offcuts this one left, and not the one that it used up
  const another = await estimate()
  expect(another.plans).not.toEqual(before.plans)
  const offered = another.plans.find(({ plan }) => plan.jobId === name)?.onHand ?? []
  expect(offered.length).toBeGreaterThan(0)
  expect(offered).not.toContain(before.plans.find(({ plan }) => plan.jobId === name)?.onHand[0])
})
