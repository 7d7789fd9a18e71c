import { afterEach, describe, expect, test } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { UNDER_WAY } from '../../core/costing/worked-costing.ts'
import { openServices, type TestServices } from './test-services.ts'

const open: TestServices[] = []
afterEach(async () => {
  for (const services of open.splice(0)) await services.close()
})
async function opened(): Promise<TestServices> {
  const services = await openServices()
  open.push(services)
  return services
}

const FINISHED = { ...UNDER_WAY, costing: { ...(UNDER_WAY.costing as object), finished: '2026-04-20' } }
const joists = SAMPLE_BOOK.rates.find(({ id }) => id === 'joist')
// 13.75 worker hours ÷ (200 board feet × 1.15), in 1/100,000 hour
const RATE = Math.round(5978.26 / (joists?.workers ?? 1))

describe('rates that finished jobs propose', () => {
  test('come from jobs on the list that are finished, and change nothing', async () => {
    const services = await opened()
    await services.call('jobs.create', { statement: UNDER_WAY })
    expect(await services.call('rates.proposed', {})).toEqual([])
    const job = await services.call('jobs.create', { statement: FINISHED })
    expect(await services.call('rates.proposed', {})).toMatchObject([
      { rate: 'joist', now: joists?.crewHours, proposed: RATE, jobs: [{ job: 'Under way' }] },
    ])
    expect((await services.call('prices.current', {})).book.rates).toEqual(SAMPLE_BOOK.rates)
    await services.call('jobs.remove', { id: job.id })
    expect(await services.call('rates.proposed', {})).toEqual([])
  })

  test('are taken one by one, by name, and can be taken back', async () => {
    const services = await opened()
    await services.call('jobs.create', { statement: FINISHED })
    const taken = await services.call('rates.take', { rate: 'joist', crewHours: RATE })
    expect(taken.book.rates.find(({ id }) => id === 'joist')).toMatchObject({
      crewHours: RATE,
      confidence: 'from 1 finished job',
    })
    expect(taken.book.rates.filter(({ id }) => id !== 'joist')).toEqual(
      SAMPLE_BOOK.rates.filter(({ id }) => id !== 'joist'),
    )
    expect(taken.lastChange).toMatch(/^Rate of “.+”: .+ h, formerly .+ h$/)
    const back = await services.call('prices.takeBack', {})
    expect(back.book.rates).toEqual(SAMPLE_BOOK.rates)
  })

  test('are refused where the hours are no more those that were shown', async () => {
    const services = await opened()
    await services.call('jobs.create', { statement: FINISHED })
    await expect(services.call('rates.take', { rate: 'joist', crewHours: RATE + 1 })).rejects.toMatchObject({
      code: 'conflict',
    })
    await expect(services.call('rates.take', { rate: 'nothing', crewHours: 1 })).rejects.toMatchObject({
      code: 'conflict',
    })
  })
})

test('what a job took goes with everything into one file and comes back', async () => {
  const services = await opened()
  await services.call('jobs.create', { statement: FINISHED })
  const { text } = await services.call('everything.export', {})
  const other = await opened()
  await other.call('everything.import', { text })
  const [job] = await other.call('jobs.list', {})
  const back = await other.call('jobs.open', { id: job?.id ?? '' })
  expect(back.statement).toEqual(FINISHED)
})
