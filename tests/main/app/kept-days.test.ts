import { expect, test } from 'vitest'
import type { DayState } from '../../../core/cutting/index.ts'
import { share, ticks } from '../../../core/units/index.ts'
import { openServices, temporaryFolder } from './test-services.ts'

const NOTHING: DayState = {
  bought: 'all',
  sawn: [],
  miscuts: [],
  culls: [],
  yard: [],
  spares: [],
  refund: share(0),
}
const SAWN: DayState = { ...NOTHING, sawn: [{ board: 1, pieces: 'all' }] }
const CULLED: DayState = { ...SAWN, culls: [{ board: 2, from: ticks(0), to: ticks(3072) }] }
const DAY = { boards: '[[1,"16",[["joist-1",5000]]]]', day: CULLED, earlier: [NOTHING, SAWN] }

test('marks at the saw, and those before them, are there again after a restart, each with its job', async () => {
  const folder = temporaryFolder()
  const first = await openServices({ folder, keep: true })
  const { id } = await first.call('jobs.create', { statement: { name: 'First' } })
  const { id: other } = await first.call('jobs.create', { statement: { name: 'Other' } })
  await first.call('day.keep', { jobId: id, planId: '2x10', kept: DAY })
  await first.call('day.keep', { jobId: id, planId: '6x6', kept: { ...DAY, earlier: [] } })
  await first.call('day.keep', { jobId: other, planId: '2x10', kept: { ...DAY, day: SAWN } })
  await first.close()

  const second = await openServices({ folder })
  expect(await second.call('day.kept', { jobId: id })).toEqual([
    { planId: '2x10', ...DAY },
    { planId: '6x6', ...DAY, earlier: [] },
  ])
  await second.call('day.keep', { jobId: id, planId: '2x10', kept: null })
  expect((await second.call('day.kept', { jobId: id })).map(({ planId }) => planId)).toEqual(['6x6'])
  expect((await second.call('day.kept', { jobId: other })).map(({ day }) => day)).toEqual([SAWN])
  await second.close()
})

test('a day of a job that is not stored is refused, and so is one that no day can be', async () => {
  const services = await openServices()
  await expect(services.call('day.keep', { jobId: 'none', planId: '2x10', kept: DAY })).rejects.toMatchObject(
    {
      code: 'not-found',
    },
  )
  const { id } = await services.call('jobs.create', { statement: { name: 'First' } })
  await expect(
    services.callAnything('day.keep', { jobId: id, planId: '2x10', kept: { ...DAY, day: { sawn: 'all' } } }),
  ).rejects.toMatchObject({ code: 'bad-input' })
  expect(await services.call('day.kept', { jobId: id })).toEqual([])
  await services.close()
})
