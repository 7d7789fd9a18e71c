import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { NO_FIRM } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK, writePriceBook } from '../../../core/pricing/index.ts'
import { feet, share } from '../../../core/units/index.ts'
import type { Methods } from '../../../shared/contract/index.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { openServices, REAL_WORKER, type TestServices } from './test-services.ts'

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
      quotes: 0,
      days: 0,
      quotesLeftOut: 0,
      alreadyHere: 0,
      prices: 'taken',
    })
    expect(await names(services)).toEqual(['=cmd() <b>', 'Zażółć ½'])
    expect(await services.call('prices.current', {})).toMatchObject({ book: { name: 'Mine' } })
    expect(await services.call('everything.import', { text })).toEqual({
      jobs: 0,
      offcuts: 0,
      quotes: 0,
      days: 0,
      quotesLeftOut: 0,
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
      (text: string) => text.replace('"version": 2', '"version": 3'),
      /a newer program made it \(version 3; this one reads 2\)/,
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

describe('sent quotes and marks at the saw', () => {
  const PAGE = { paper: 'letter', scale: null } as const
  const NOTHING = {
    bought: 'all',
    sawn: [],
    miscuts: [],
    culls: [],
    yard: [],
    spares: [],
    refund: share(0),
  } as const
  const DAY = {
    boards: '[[1,"16",[["joist-1",5000]]]]',
    day: { ...NOTHING, sawn: [{ board: 1, pieces: 'all' }] },
    earlier: [NOTHING],
  } as const

  let sender: TestServices
  let jobId: string
  let text: string
  beforeAll(async () => {
    sender = await openServices({ worker: REAL_WORKER })
    const statement = { ...smallJob(), name: 'Tarn House' }
    await sender.call('firm.save', { ...NO_FIRM, name: 'Plumb & Level' })
    jobId = (await sender.call('jobs.create', { statement })).id
    await sender.call('quotes.send', { statement, jobId, date: '2026-11-25', page: PAGE })
    await sender.call('quotes.send', { statement, jobId, date: '2026-11-26', page: PAGE })
    await sender.call('day.keep', { jobId, planId: '2x8', kept: DAY })
    text = (await sender.call('everything.export', {})).text
  })
  afterAll(() => sender.close())

  test('come along with their papers, byte for byte, and a second time change nothing', async () => {
    const services = await opened()
    expect(await services.call('everything.import', { text })).toMatchObject({
      jobs: 1,
      quotes: 2,
      days: 1,
      quotesLeftOut: 0,
    })
    expect(await services.call('day.kept', { jobId })).toEqual([{ planId: '2x8', ...DAY }])
    expect(await services.call('firm.read', {})).toMatchObject({ name: 'Plumb & Level' })
    for (const revision of [1, 2])
      expect(await services.call('quotes.paper', { jobId, revision })).toEqual(
        await sender.call('quotes.paper', { jobId, revision }),
      )
    expect(await services.call('everything.import', { text })).toMatchObject({
      jobs: 0,
      quotes: 0,
      days: 0,
      alreadyHere: 4,
    })
    const again = JSON.parse((await services.call('everything.export', {})).text)
    const before = JSON.parse(text)
    expect({ ...again, madeAt: '' }).toEqual({ ...before, madeAt: '' })
  })

  test('never take a number that another quote has here, and say how many stayed out', async () => {
    const services = await openServices({ worker: REAL_WORKER })
    open.push(services)
    const statement = { ...smallJob(), name: 'Another' }
    const { id } = await services.call('jobs.create', { statement })
    await services.call('quotes.send', { statement, jobId: id, date: '2026-11-20', page: PAGE })
    expect(await services.call('everything.import', { text })).toMatchObject({
      jobs: 1,
      quotes: 0,
      quotesLeftOut: 2,
    })
    expect(await services.call('quotes.read', { statement, jobId: id, date: '' })).toMatchObject({
      sent: [{ number: 1, revision: 1, date: '2026-11-20' }],
    })
  })

  test('a file of the first version, which had none of them, is still read', async () => {
    const { quotes, days, firm, ...older } = JSON.parse(text)
    expect([quotes.length, days.length, firm.name]).toEqual([2, 1, 'Plumb & Level'])
    const services = await opened()
    expect(
      await services.call('everything.import', { text: JSON.stringify({ ...older, version: 1 }) }),
    ).toMatchObject({ jobs: 1, quotes: 0, days: 0 })
    expect(await names(services)).toEqual(['Tarn House'])
  })

  test.each([
    [
      'a paper that is no PDF',
      (all: Spoilt) => all.quotes.map((one) => ({ ...one, pdf: 'PGI+' })),
      /quotes\.0\.pdf/,
    ],
    [
      'a price book that cannot be read',
      (all: Spoilt) => all.quotes.map((one) => ({ ...one, madeFrom: { ...one.madeFrom, book: '{}' } })),
      /the price book of quote 1/,
    ],
    [
      'a quote of a job that is not there',
      (all: Spoilt) => all.quotes.map((one) => ({ ...one, jobId: 'elsewhere' })),
      /a job elsewhere that it does not hold/,
    ],
  ])('%s is refused with all of the file', async (_, spoil, sentence) => {
    const all = JSON.parse(text) as Spoilt
    const services = await opened()
    await expect(
      services.call('everything.import', { text: JSON.stringify({ ...all, quotes: spoil(all) }) }),
    ).rejects.toMatchObject({ code: 'bad-input', message: expect.stringMatching(sentence) })
    expect(await services.call('jobs.list', {})).toEqual([])
  })
})

interface Spoilt {
  readonly quotes: readonly { readonly madeFrom: object }[]
}

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
