import { afterEach, describe, expect, test } from 'vitest'
import { SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { feet } from '../../../core/units/index.ts'
import type { Methods } from '../../../shared/contract/index.ts'
import { openServices, type TestServices } from './test-services.ts'

const offcut: Methods['offcuts.add'][0] = {
  product: { size: '2x10', species: 'SP', grade: 'No.2', treatment: 'treated' },
  length: feet(6),
  count: 2,
  fromJob: 'Barn',
}

const open: TestServices[] = []
afterEach(async () => {
  for (const services of open.splice(0)) await services.close()
})
async function opened(): Promise<TestServices> {
  const services = await openServices()
  open.push(services)
  return services
}

async function names(services: TestServices): Promise<string[]> {
  return (await services.call('jobs.list', {})).map((job) => job.name).sort()
}

async function filled(): Promise<{ services: TestServices; text: string }> {
  const services = await opened()
  await services.call('jobs.create', { statement: { name: '=cmd() <b>' } })
  await services.call('jobs.create', { statement: { name: 'Zażółć ½', size: { width: '18 ft' } } })
  await services.call('offcuts.add', offcut)
  await services.call('prices.import', {
    text: JSON.stringify(writePriceBook({ ...SAMPLE_BOOK, name: 'Mine' })),
  })
  const { text } = await services.call('everything.export', {})
  return { services, text }
}

describe('everything as one file', () => {
  test('comes into an empty program whole, and a second time changes nothing', async () => {
    const { text } = await filled()
    const services = await opened()
    expect(await services.call('everything.import', { text })).toEqual({
      jobs: 2,
      offcuts: 2,
      alreadyHere: 0,
      prices: 'taken',
    })
    expect(await names(services)).toEqual(['=cmd() <b>', 'Zażółć ½'])
    expect(await services.call('prices.current', {})).toMatchObject({ book: { name: 'Mine' } })
    expect(await services.call('everything.import', { text })).toEqual({
      jobs: 0,
      offcuts: 0,
      alreadyHere: 4,
      prices: 'own kept',
    })
  })

  test('never overwrites: a job that reads otherwise here stays, the other comes in beside it', async () => {
    const { services, text } = await filled()
    const jobs = await services.call('jobs.list', {})
    const job = jobs.find(({ name }) => name === 'Zażółć ½')
    await services.call('jobs.save', {
      id: job?.id ?? '',
      revision: job?.revision ?? 0,
      statement: { name: 'Changed here' },
      label: 'Name',
    })
    expect(await services.call('everything.import', { text })).toMatchObject({ jobs: 1, alreadyHere: 3 })
    expect(await names(services)).toEqual(['=cmd() <b>', 'Changed here', 'Zażółć ½'])
  })

  test.each([
    ['text that is no JSON', () => '{"kind":', /^Nothing was taken from the file: it is not JSON/],
    ['another file', () => '{"name":"A job"}', /Nothing was taken from the file: kind/],
    [
      'a newer file',
      (text: string) => text.replace('"version": 1', '"version": 2'),
      /a newer program made it \(version 2; this one reads 1\)/,
    ],
    [
      'one bad offcut at its end',
      (text: string) => text.replace('"length": 2304', '"length": "6 ft"'),
      /offcuts\.0\.length/,
    ],
    [
      'a price book with a fault',
      (text: string) => JSON.stringify({ ...JSON.parse(text), prices: '{"name":1}' }),
      /its price book/,
    ],
  ])('%s is refused with a sentence, and nothing of it comes in', async (_, spoil, sentence) => {
    const { text } = await filled()
    const services = await opened()
    await expect(services.call('everything.import', { text: spoil(text) })).rejects.toMatchObject({
      code: 'bad-input',
      message: expect.stringMatching(sentence),
    })
    expect(await services.call('jobs.list', {})).toEqual([])
    expect(await services.call('offcuts.list', {})).toEqual([])
  })
})

describe('a job taken off the list', () => {
  test('is not opened again by itself, and can be brought back as it was', async () => {
    const services = await opened()
    const { id } = await services.call('jobs.create', { statement: { name: 'Gone' } })
    await services.call('jobs.create', { statement: { name: 'Here' } })
    await services.call('jobs.open', { id })
    await services.call('jobs.remove', { id })
    expect(await names(services)).toEqual(['Here'])
    expect(await services.call('jobs.last', {})).toMatchObject({ name: 'Here' })
    expect(await services.call('jobs.removed', {})).toMatchObject([{ id, name: 'Gone' }])
    await services.call('jobs.bringBack', { id })
    expect(await names(services)).toEqual(['Gone', 'Here'])
    await expect(services.call('jobs.remove', { id: 'nowhere' })).rejects.toMatchObject({ code: 'not-found' })
  })

  test('earlier states of a job are listed by their step and read one by one', async () => {
    const services = await opened()
    const { id } = await services.call('jobs.create', { statement: { name: 'A' } })
    await services.call('jobs.save', { id, revision: 1, statement: { name: 'B' }, label: 'Name' })
    expect(await services.call('jobs.versions', { id })).toMatchObject([
      { revision: 2, label: 'Name' },
      { revision: 1, label: 'Created' },
    ])
    expect(await services.call('jobs.version', { id, revision: 1 })).toEqual({ statement: { name: 'A' } })
    await expect(services.call('jobs.version', { id, revision: 9 })).rejects.toMatchObject({
      code: 'not-found',
    })
  })
})
