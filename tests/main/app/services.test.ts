import { rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { INPUTS } from '../../../main/app/inputs.ts'
import { openServices, REAL_WORKER, type TestServices, temporaryFolder } from './test-services.ts'

let services: TestServices
beforeEach(async () => {
  services = await openServices()
})
afterEach(() => services.close())

describe('jobs', () => {
  test('the demo is opened on first start, and the same one the next time', async () => {
    const first = await services.call('jobs.last', {})
    expect(first).toMatchObject({ name: 'Heron Lane', revision: 1, recovered: false, statement: DEMO_JOB })
    expect((await services.call('jobs.last', {})).id).toBe(first.id)
    expect(await services.call('jobs.list', {})).toHaveLength(1)
  })

  test('the job last opened is there at the next start', async () => {
    await services.call('jobs.last', {})
    const made = await services.call('jobs.create', { statement: { name: 'Barn deck' } })
    await services.call('jobs.open', { id: (await services.call('jobs.last', {})).id })
    expect((await services.call('jobs.last', {})).id).toBe(made.id)
  })

  test('a save answers the new revision and its time, and tells the open windows', async () => {
    const job = await services.call('jobs.last', {})
    const statement = { ...DEMO_JOB, name: 'Wider' }
    const saved = await services.call('jobs.save', { id: job.id, revision: 1, statement, label: 'Width' })
    expect(saved.revision).toBe(2)
    expect(saved.savedAt).toMatch(/^2026-11-25T12:\d\d:00.000Z$/)
    expect(services.events).toEqual([{ event: 'jobs.changed', data: { id: job.id, revision: 2 } }])
    expect(await services.call('jobs.open', { id: job.id })).toMatchObject({
      name: 'Wider',
      revision: 2,
      statement,
    })
  })

  test('a save on an old revision is a conflict, and the stored job stays', async () => {
    const { id } = await services.call('jobs.last', {})
    await services.call('jobs.save', { id, revision: 1, statement: { name: 'Mine' }, label: '' })
    await expect(
      services.call('jobs.save', { id, revision: 1, statement: { name: 'Theirs' }, label: '' }),
    ).rejects.toMatchObject({
      code: 'conflict',
      message: expect.stringContaining('the stored revision is 2'),
    })
    expect((await services.call('jobs.open', { id })).name).toBe('Mine')
  })

  test('a job that is not there is said to be so', async () => {
    await expect(services.call('jobs.open', { id: 'nowhere' })).rejects.toMatchObject({ code: 'not-found' })
    await expect(
      services.call('jobs.save', { id: 'nowhere', revision: 1, statement: {}, label: '' }),
    ).rejects.toMatchObject({ code: 'not-found' })
  })

  test('two copies of the program on one store see each other’s saves as conflicts, not as losses', async () => {
    const other = await openServices({ folder: services.folder, keep: true })
    const { id } = await services.call('jobs.last', {})
    expect((await other.call('jobs.last', {})).id).toBe(id)
    await other.call('jobs.save', { id, revision: 1, statement: { name: 'Theirs' }, label: '' })
    await expect(
      services.call('jobs.save', { id, revision: 1, statement: { name: 'Mine' }, label: '' }),
    ).rejects.toMatchObject({ code: 'conflict' })
    expect(await services.call('jobs.open', { id })).toMatchObject({ name: 'Theirs', recovered: false })
    await other.close()
  })

  test('a job without a usable name is listed as untitled, and a long one in one bounded line', async () => {
    await services.call('jobs.create', { statement: { name: 17 } })
    await services.call('jobs.create', { statement: { name: `two\nlines ${'x'.repeat(500)}` } })
    const [long, untitled] = await services.call('jobs.list', {})
    expect(untitled?.name).toBe('Untitled job')
    expect(long?.name).toMatch(/^two lines x+$/)
    expect(long?.name).toHaveLength(200)
  })
})

describe('after a crash', () => {
  test('the job last worked on is there as it was saved, and is called recovered once', async () => {
    const { id } = await services.call('jobs.last', {})
    await services.call('jobs.save', { id, revision: 1, statement: { name: 'In the middle' }, label: '' })
    const db = new Sqlite(join(services.folder, 'jobs.db'))
    // what a killed program leaves behind: its session, of a process number that no process has
    db.prepare("INSERT INTO sessions VALUES ('killed', 4194305, '2026-11-24T00:00:00Z')").run()
    db.close()
    const next = await openServices({ folder: services.folder, keep: true })
    expect(await next.call('jobs.last', {})).toMatchObject({
      id,
      name: 'In the middle',
      revision: 2,
      recovered: true,
    })
    expect((await next.call('jobs.last', {})).recovered).toBe(false)
    await next.close()
  })
})

describe('a store that cannot be used', () => {
  test('keeps the program from starting, with a sentence that says the way out', async () => {
    const folder = temporaryFolder()
    writeFileSync(join(folder, 'jobs.db'), 'scribble'.repeat(100))
    await expect(openServices({ folder })).rejects.toMatchObject({
      code: 'store-unusable',
      message: expect.stringMatching(/is damaged and was left as it is\. Move it away/),
    })
    rmSync(folder, { recursive: true })
  })
})

describe('what comes through a door', () => {
  test.each(['jobs.delete', '__proto__', 'constructor', 'toString', ''])(
    'unknown method "%s" is refused',
    async (name) => {
      await expect(services.callAnything(name, {})).rejects.toMatchObject({ code: 'unknown-method' })
    },
  )

  test.each(Object.keys(INPUTS))('%s refuses an input with a field it does not know', async (method) => {
    await expect(services.callAnything(method, { surprise: 1 })).rejects.toMatchObject({ code: 'bad-input' })
  })

  test.each(Object.keys(INPUTS))('%s refuses null, a text and a list', async (method) => {
    for (const input of [null, 'x', [1]]) {
      await expect(services.callAnything(method, input)).rejects.toMatchObject({ code: 'bad-input' })
    }
  })

  const range = { edit: 1, statement: {}, from: 384, to: 768, step: 192 }
  test.each([
    ['a text for a length', { ...range, from: '18 ft' }],
    ['half a tick', { ...range, step: 0.5 }],
    ['no step', { ...range, step: 0 }],
    ['a step that makes thousands of widths', { ...range, step: 16, to: 384_000 }],
    ['ends the wrong way round', { ...range, from: 800 }],
    ['an endless length', { ...range, to: Number.POSITIVE_INFINITY }],
  ])('a comparison with %s is refused with where and what', async (_what, input) => {
    await expect(services.callAnything('compare.run', input)).rejects.toMatchObject({
      code: 'bad-input',
      message: expect.stringMatching(/^compare\.run: (from|to|step): /),
    })
  })

  test.each([
    ['is a list', []],
    ['is missing', undefined],
    ['holds a function of a class', { when: new Date(0) }],
    ['is nested a thousand deep', JSON.parse(`${'{"a":'.repeat(1000)}1${'}'.repeat(1000)}`)],
    ['holds more values than any job', { list: Array.from({ length: 40_001 }, () => 0) }],
    ['holds a megabyte of text', { name: 'x'.repeat(1_000_000) }],
    ['sets a prototype', JSON.parse('{"__proto__": {"polluted": true}}')],
    ['holds a number that is none', { width: Number.NaN }],
  ])('a job that %s is refused', async (_what, statement) => {
    await expect(services.callAnything('jobs.create', { statement })).rejects.toMatchObject({
      code: 'bad-input',
      message: expect.stringMatching(/^jobs\.create: statement: /),
    })
    expect(await services.call('jobs.list', {})).toEqual([])
  })
})

describe('calculations', () => {
  test('an estimate carries the edit it belongs to', async () => {
    const answer = await services.call('estimate.run', { edit: 7, statement: { name: 'one' } })
    expect(answer).toMatchObject({ edit: 7, result: { ok: false, faults: [{ path: 'one' }] } })
  })

  test('an overtaken estimate says that it was stopped', async () => {
    const running = services.call('estimate.run', { edit: 1, statement: { busy: 80 } })
    const overtaken = services.call('estimate.run', { edit: 2, statement: { name: 'two' } })
    const newest = services.call('estimate.run', { edit: 3, statement: { name: 'three' } })
    await expect(overtaken).rejects.toMatchObject({ code: 'stopped' })
    expect((await newest).edit).toBe(3)
    await running
  })

  test('rows of a comparison arrive as events with their edit', async () => {
    const input = { edit: 4, statement: {}, from: 384, to: 1152, step: 384 } as never
    expect(await services.call('compare.run', input)).toEqual({ edit: 4, complete: true, rows: 3 })
    expect(services.events.map(({ event }) => event)).toEqual(['compare.row', 'compare.row', 'compare.row'])
    expect(services.events.every(({ data }) => 'edit' in data && data.edit === 4)).toBe(true)
  })

  test('the price book in use and its date are told', async () => {
    expect(await services.call('app.info', {})).toEqual({
      version: '1.2.3',
      door: 'browser',
      bookName: SAMPLE_BOOK.name,
      bookDate: SAMPLE_BOOK.date,
    })
    expect((await services.call('prices.current', {})).book.labourRate).toBe(SAMPLE_BOOK.labourRate)
  })

  test('after closing nothing more is answered, and closing twice is safe', async () => {
    const other = await openServices()
    await other.close()
    await expect(other.call('jobs.list', {})).rejects.toMatchObject({ code: 'stopped' })
    await other.close()
  })
})

describe('with the core behind it', () => {
  test('the demo is estimated, compared and written as a workbook under its name', async () => {
    const real = await openServices({ worker: REAL_WORKER })
    const { result } = await real.call('estimate.run', { edit: 1, statement: DEMO_JOB })
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    expect(result.estimate.pricing?.totals.price).toBeGreaterThan(0)
    expect(result.estimate.plans.length).toBeGreaterThan(2)
    const book = await real.call('workbook.make', { statement: DEMO_JOB })
    expect(book.fileName).toBe('Heron Lane.xlsx')
    expect(Buffer.from(book.base64, 'base64').subarray(0, 2).toString()).toBe('PK')
    const width = result.estimate.job.size.width
    const range = { from: width, to: width, step: width }
    expect(await real.call('compare.run', { edit: 2, statement: DEMO_JOB, ...range })).toMatchObject({
      rows: 1,
    })
    const row = real.events.findLast(({ event }) => event === 'compare.row')?.data as {
      row: { cost: number }
    }
    expect(row.row.cost).toBe(result.estimate.pricing?.totals.cost)
    await expect(
      real.call('workbook.make', { statement: { size: { width: '5 bananas' } } }),
    ).rejects.toMatchObject({
      code: 'bad-input',
      message: expect.stringContaining('size.width'),
    })
    await real.close()
  })
})
