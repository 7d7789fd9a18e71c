import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { DEMO_JOB } from '../../core/job/index.ts'
import { ticks } from '../../core/units/index.ts'
import { placesFrom } from '../../main/app/places.ts'
import type { Emit, Services } from '../../main/app/service-types.ts'
import { createServices } from '../../main/app/services.ts'
import { answerCall } from '../../main/desktop/answer-call.ts'
import { createEventStream } from '../../main/host/event-stream.ts'
import { type Host, openHost } from '../../main/host/server.ts'
import { createLog } from '../../main/log/index.ts'
import { desktopClient } from '../../renderer/client/desktop-client.ts'
import { httpClient } from '../../renderer/client/http-client.ts'
import type { Client, Events, MethodName } from '../../shared/contract/index.ts'
import { smallJob } from '../fixtures/worked-job.ts'

/** One program behind two doors, called by the window's own clients, and once directly. */
let services: Services
let host: Host
const events = createEventStream()
const rows: Events['compare.row'][] = []
const clients: Record<'direct' | 'browser' | 'desktop', Client['call'] | null> = {
  direct: null,
  browser: null,
  desktop: null,
}

beforeAll(async () => {
  const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-contract-'))
  const log = createLog(storeFolder)
  const places = placesFrom(join(import.meta.dirname, '../../main/host/index.ts'))
  const { workerPath, paperWorkerPath, windowFolder } = places
  const emit: Emit = (event, data) => {
    if (event === 'compare.row') rows.push(data as Events['compare.row'])
    events.emit(event, data)
  }
  services = await createServices({
    storeFolder,
    workerPath,
    paperWorkerPath,
    door: 'browser',
    version: '1.2.3',
    emit,
  })
  host = await openHost({ port: 0, windowFolder, services, events, log })

  const entry = await fetch(host.link, { redirect: 'manual' })
  const cookie = entry.headers.getSetCookie()[0]?.split(';', 1)[0] ?? ''
  const { origin } = new URL(host.link)
  const plainFetch = globalThis.fetch
  // The page's address and cookie, which a browser adds by itself.
  globalThis.fetch = (path, options) =>
    plainFetch(`${origin}${String(path)}`, {
      ...options,
      headers: { ...(options?.headers as Record<string, string>), origin, cookie },
    })
  clients.direct = services.call as Client['call']
  clients.browser = httpClient().call
  const ownPage = { senderFrame: { url: 'kerfwright://window/', parent: null } }
  clients.desktop = desktopClient({
    call: (method, input) => answerCall(ownPage, method, input, services, log),
    on: () => () => {},
  }).call
})

afterAll(async () => {
  await host.close()
  await services.close()
})

/** The three answers to one call: each a result, or a code and a sentence. */
async function through(method: string, input: unknown): Promise<unknown[]> {
  const answers: unknown[] = []
  for (const call of Object.values(clients)) {
    const answer = await (call as (method: string, input: unknown) => Promise<unknown>)(method, input).then(
      (result) => ({ result: JSON.parse(JSON.stringify(result)) as unknown }),
      (fault: Error & { code?: string }) => ({ code: fault.code, message: fault.message }),
    )
    answers.push(answer)
  }
  return answers
}

const statement = DEMO_JOB
const answered = new Set<MethodName>()

/** Asserts that all three answers are equal, and gives the one. */
async function same(method: MethodName, input: unknown): Promise<unknown> {
  const [direct, browser, desktop] = await through(method, input)
  expect(browser).toEqual(direct)
  expect(desktop).toEqual(direct)
  expect(direct).toHaveProperty('result')
  answered.add(method)
  return (direct as { result: unknown }).result
}

describe('through every door the same answer comes to', () => {
  test('app.info', async () => {
    expect(await same('app.info', {})).toMatchObject({ version: '1.2.3', door: 'browser' })
  })
  test('jobs.last, which is the demo on first start, and jobs.list and jobs.open of it', async () => {
    const demo = (await same('jobs.last', {})) as { id: string }
    expect(await same('jobs.list', {})).toMatchObject([{ id: demo.id }])
    expect(await same('jobs.open', { id: demo.id })).toMatchObject({ id: demo.id })
  })
  test('prices.current', async () => {
    expect(await same('prices.current', {})).toMatchObject({ importedAt: null, book: { invented: true } })
  })
  test('prices.export, prices.import and prices.useSample, but for the time', async () => {
    const { text } = (await same('prices.export', {})) as { text: string }
    const [direct, browser, desktop] = await through('prices.import', { text })
    for (const one of [direct, browser, desktop])
      expect(one).toMatchObject({ result: { ok: true, prices: { importedAt: expect.any(String) } } })
    expect(await same('prices.export', {})).toMatchObject({ text })
    expect(await same('prices.import', { text: '{ "version": 1 }' })).toMatchObject({
      ok: false,
      faults: expect.arrayContaining([expect.objectContaining({ path: 'lumber' })]),
    })
    expect(await same('prices.useSample', {})).toMatchObject({ importedAt: null })
  })
  test('prices.readList, prices.takeList and prices.takeBack of what was taken', async () => {
    const list = {
      text: 'code,price\n51010,2.50',
      columns: null,
      date: '2026-03-01',
      supplier: 'Yard B',
      leaveOutUnknown: false,
      beside: false,
    }
    expect(await same('prices.readList', list)).toMatchObject({
      ok: true,
      changes: [{ row: 2, before: 23_900, after: 25_000, date: '2026-03-01', supplier: 'Yard B' }],
    })
    expect(await same('prices.readList', { ...list, text: 'code,price\nx,y' })).toMatchObject({ ok: false })
    const taken = await through('prices.takeList', list)
    for (const one of taken) expect(one).toMatchObject({ result: { ok: true, changed: 1 } })
    answered.add('prices.takeList')
    const back = await through('prices.takeBack', {})
    for (const one of back.slice(0, 2))
      expect(one).toMatchObject({ result: { lastChange: '1 prices from Yard B' } })
    expect(back[2]).toMatchObject({ result: { importedAt: null } })
    answered.add('prices.takeBack')
    const again = await through('prices.makeAgain', {})
    expect(again[0]).toMatchObject({ result: { lastChange: '1 prices from Yard B' } })
    answered.add('prices.makeAgain')
    await through('prices.takeBack', {})
  })
  test('prices.edit, and of faulty texts what is wrong with each', async () => {
    const set = (text: string) => ({
      kind: 'set' as const,
      row: { of: 'book' as const },
      field: 'labourRate' as const,
      text,
    })
    expect(await same('prices.edit', { edits: [set('much'), set('$61')] })).toMatchObject({
      ok: false,
      faults: [{ edit: 0 }],
    })
    for (const one of await through('prices.edit', { edits: [set('$61')] }))
      expect(one).toMatchObject({ result: { ok: true, label: 'Price book: labour rate $61' } })
    answered.add('prices.edit')
    expect((await through('prices.takeBack', {}))[2]).toMatchObject({ result: { importedAt: null } })
  })
  test('rates.proposed where no job is finished, and rates.take of a rate that nobody proposed', async () => {
    expect(await same('rates.proposed', {})).toEqual([])
    for (const answer of await through('rates.take', { rate: 'joists', crewHours: 1 }))
      expect(answer).toMatchObject({
        code: 'conflict',
        message: expect.stringContaining('look at them again'),
      })
    answered.add('rates.take')
  })
  test('estimate.run, number by number', async () => {
    expect(await same('estimate.run', { edit: 7, statement })).toMatchObject({
      edit: 7,
      result: { ok: true },
    })
  })
  test('estimate.first, from first plans', async () => {
    const answer = await same('estimate.first', { edit: 8, statement })
    expect(answer).toMatchObject({ edit: 8, result: { ok: true } })
  })
  test('workbook.make, byte by byte', async () => {
    expect(await same('workbook.make', { statement })).toHaveProperty('base64')
  })
  test('firm.save and firm.read', async () => {
    const firm = {
      name: 'Plumb & <Level>',
      lines: ['12 Mill Lane'],
      logo: null,
      state: '',
      terms: [],
      validDays: 14,
      stages: [],
    }
    expect(await same('firm.save', firm)).toEqual(firm)
    expect(await same('firm.read', {})).toEqual(firm)
  })
  test('papers.preview and papers.make, page by page and byte by byte, with the firm on them', async () => {
    const asked = { statement, only: ['quote'], page: { paper: 'a4', scale: null }, date: '', revision: 'B' }
    const { pages } = (await same('papers.preview', asked)) as { pages: readonly { marks: unknown }[] }
    expect(JSON.stringify(pages)).toContain('Plumb & <Level>')
    expect(await same('papers.make', asked)).toHaveProperty('base64')
    const { only: _only, page: _page, ...order } = asked
    expect(await same('papers.order', { ...order, as: 'txt' })).toHaveProperty('files.0.base64')
    const [direct] = await through('papers.preview', { ...asked, date: 'tomorrow' })
    expect(direct).not.toHaveProperty('result')
  })
  test('quotes.send, each door taking the next revision; quotes.read, .lines, .paper and .changeOrder', async () => {
    const small = smallJob()
    const made = await clients.direct?.('jobs.create', { statement: small })
    const { id: jobId } = made as { id: string }
    const page = { paper: 'a4', scale: null }
    const sent = await through('quotes.send', { statement: small, jobId, date: '2026-03-31', page })
    for (const [i, one] of sent.entries())
      expect(one).toMatchObject({ result: { sent: { number: 1, revision: i + 1, date: '2026-03-31' } } })
    answered.add('quotes.send')
    expect(await same('quotes.read', { statement: small, jobId, date: '2026-03-31' })).toMatchObject({
      sent: [{ revision: 1 }, { revision: 2 }, { revision: 3 }],
      change: { lines: [] },
    })
    expect(await same('quotes.lines', { statement: small, jobId })).toMatchObject({
      from: { revision: 3 },
      lines: [],
    })
    expect(await same('quotes.paper', { jobId, revision: 2 })).toHaveProperty('base64')
    await clients.direct?.('quotes.send', {
      statement: smallJob('10 ft'),
      jobId,
      date: '2026-04-01',
      page: page as never,
    })
    expect(await same('quotes.changeOrder', { jobId, revision: 4, page })).toHaveProperty('base64')
  })
  test('sizing.run, with what it proposes', async () => {
    const held = ['frame.joists.size', 'frame.beams.front.size', 'frame.postSize', 'ground.tube']
    expect(await same('sizing.run', { edit: 9, statement, held })).toMatchObject({
      edit: 9,
      result: { ok: true, sized: { work: { proven: true } } },
    })
  })
  test('ground.run, with a hole that was found off', async () => {
    const found = { post: 2, dx: ticks(64), dy: ticks(0), barred: false }
    expect(await same('ground.run', { statement, found })).toMatchObject({
      ok: true,
      ground: { found: { at: found, options: expect.arrayContaining([]) } },
    })
  })
  test('cutlist.run, planned and refused', async () => {
    const saw = { kerf: ticks(4), endTrim: ticks(0) }
    const text = 'Qty,Length,Mark\n4,9 ft,J1\n'
    const stockText = 'Length,Price\n20 ft,9\n'
    expect(await same('cutlist.run', { text, stockText, ...saw })).toMatchObject({
      ok: true,
      result: { plans: [{ plan: { cost: 1800, status: 'proven optimal' } }], infeasible: [] },
    })
    const columns = ['quantity', 'length', 'nothing']
    expect(await same('cutlist.run', { text: '4,9 fot,J1\n', columns, ...saw })).toMatchObject({
      ok: false,
      faults: [{ row: 1, column: 2 }],
    })
  })
  test('cutlist.workbook, byte by byte', async () => {
    const text = 'Qty,Length,Mark\n4,9 ft,J1\n'
    const saw = { kerf: ticks(4), endTrim: ticks(0) }
    expect(
      await same('cutlist.workbook', { text, stockText: 'Length,Price\n20 ft,9\n', ...saw }),
    ).toMatchObject({
      fileName: 'cut-list.xlsx',
    })
  })
  test('cutlist.keep and cutlist.kept', async () => {
    const list = {
      text: '9 ft',
      stockText: '',
      columns: ['length'],
      stockColumns: null,
      kerf: '1/8',
      endTrim: '0',
    }
    expect(await same('cutlist.kept', {})).toBeNull()
    expect(await same('cutlist.keep', list)).toEqual({})
    expect(await same('cutlist.kept', {})).toEqual(list)
  })
  test('window.keep and window.kept', async () => {
    const memory = { theme: 'dark', drawing: '', notes: false, recent: ['undo'], template: null } as const
    expect(await same('window.kept', {})).toBeNull()
    expect(await same('window.keep', memory)).toEqual({})
    expect(await same('window.kept', {})).toEqual(memory)
  })
  test('wish.price, of a run in one piece and of one that no board is long enough for', async () => {
    const wishing = (onePiece: string) => ({ ...statement, cutting: { onePiece } })
    expect(await same('wish.price', { statement, wished: wishing('Beam B1') })).toMatchObject({
      ok: true,
      within: 0,
    })
    expect(await same('wish.price', { statement, wished: wishing('Decking') })).toMatchObject({ ok: false })
  })
  test('joints.explain, of one point', async () => {
    const asked = { statement, runId: 'run-beam-front', at: [ticks(384)] }
    expect(await same('joints.explain', asked)).toMatchObject([{ kind: 'refused' }])
  })
  test('work.stop, of nothing', async () => {
    expect(await same('work.stop', { task: 'nothing' })).toEqual({ stopped: false })
  })
  test('day.keep and day.kept', async () => {
    const day = { bought: 'all', sawn: [], miscuts: [], culls: [], yard: [], spares: [], refund: 0 }
    const kept = { boards: '[]', day, earlier: [] }
    const { id: jobId } = (await clients.direct?.('jobs.create', { statement })) ?? { id: '' }
    expect(await same('day.keep', { jobId, planId: '2x10', kept })).toEqual({})
    expect(await same('day.kept', { jobId })).toEqual([{ planId: '2x10', ...kept }])
  })
  test('day.replan, with nothing sawn yet and with a board culled', async () => {
    const day = { bought: 'all', sawn: [], miscuts: [], culls: [], yard: [], spares: [], refund: 0 }
    const planId = '2x10 SP No.2 treated'
    expect(await same('day.replan', { statement, planId, day })).toMatchObject({
      ok: true,
      replan: { rest: null, changed: [], buy: [], money: { extra: 0 } },
    })
    const culls = [{ board: 1, from: 0, to: 384 * 8 }]
    const culled = await same('day.replan', { statement, planId, day: { ...day, culls } })
    expect(culled).toMatchObject({ ok: true, replan: { changed: [1] } })
    const refused = await same('day.replan', { statement, planId: '2x99', day })
    expect(refused).toMatchObject({ ok: false, reasons: [expect.stringContaining('"2x10 SP No.2 treated"')] })
  })
  test('offcuts.list, offcuts.add and offcuts.remove, but for ids and times', async () => {
    expect(await same('offcuts.list', {})).toEqual([])
    const product = { size: '2x10', species: 'SP', grade: 'No.2', treatment: 'treated' }
    const added = await through('offcuts.add', { product, length: 384 * 4, count: 2, fromJob: 'the shed' })
    for (const one of added)
      expect(one).toMatchObject({ result: [{ product, length: 384 * 4 }, { product }] })
    answered.add('offcuts.add')
    const all = (await same('offcuts.list', {})) as { id: string }[]
    expect(all).toHaveLength(6)
    expect(await clients.direct?.('offcuts.remove', { ids: all.map(({ id }) => id) })).toEqual({ removed: 6 })
    expect(await same('offcuts.remove', { ids: ['nothing'] })).toEqual({ removed: 0 })
  })
  test('offcuts.takeFromPlan, once for each job', async () => {
    const keeping = { ...statement, cutting: { keepOffcutsFrom: '1 in' } }
    const made = await clients.direct?.('jobs.create', { statement: keeping })
    const { id } = made as { id: string }
    const [direct, browser, desktop] = await through('offcuts.takeFromPlan', { jobId: id })
    expect(direct).toMatchObject({ result: { used: 0 } })
    expect(browser).toMatchObject({ code: 'conflict' })
    expect(desktop).toEqual(browser)
    const { added } = (direct as { result: { added: number } }).result
    expect(added).toBeGreaterThan(0)
    const all = (await same('offcuts.list', {})) as { id: string }[]
    expect(all).toHaveLength(added)
    await clients.direct?.('offcuts.remove', { ids: all.map((one) => one.id) })
    answered.add('offcuts.takeFromPlan')
  })
  test('compare.run, with the same rows', async () => {
    rows.length = 0
    const range = { from: ticks(20 * 384), to: ticks(20 * 384 + 192), step: ticks(192) }
    expect(await same('compare.run', { edit: 8, statement, ...range })).toEqual({
      edit: 8,
      complete: true,
      rows: 2,
    })
    // A width may be told twice: soon with a sound plan, and again once that is proven.
    const proven = rows.filter(({ row }) => row.proven).map(({ row }) => JSON.stringify(row))
    expect(proven.length).toBe(6)
    expect(new Set(proven).size).toBe(2)
  })
  test('sizes.run, with the same end', async () => {
    const side = (feet: number) => ({ from: ticks(feet * 384), to: ticks(feet * 384), step: ticks(384) })
    expect(await same('sizes.run', { edit: 9, statement, width: side(12), depth: side(10) })).toEqual({
      edit: 9,
      complete: true,
      rows: 1,
    })
  })
  test('jobs.create and jobs.save, but for ids and times', async () => {
    const created = await through('jobs.create', { statement })
    const [first] = created as { result: { id: string; revision: number } }[]
    for (const one of created)
      expect(one).toMatchObject({ result: { statement, revision: first?.result.revision } })
    for (const one of created as { result: { id: string; revision: number } }[]) {
      const { id, revision } = one.result
      const saved = { id, revision, statement: { ...statement, name: 'Changed' }, label: 'Name' }
      // The first of the three saves; the other two come to a stored revision that is newer.
      const [direct, browser, desktop] = await through('jobs.save', saved)
      expect(direct).toMatchObject({ result: { revision: revision + 1 } })
      expect(browser).toMatchObject({ code: 'conflict' })
      expect(desktop).toEqual(browser)
    }
    answered.add('jobs.create').add('jobs.save')
  })
  test('jobs.versions and jobs.version; jobs.remove, jobs.removed and jobs.bringBack', async () => {
    const made = await clients.direct?.('jobs.create', { statement })
    const { id } = made as { id: string }
    expect(await same('jobs.versions', { id })).toMatchObject([{ revision: 1, label: 'Created' }])
    expect(await same('jobs.version', { id, revision: 1 })).toEqual({ statement })
    expect(await same('jobs.remove', { id })).toEqual({})
    expect(await same('jobs.removed', {})).toMatchObject([{ id }])
    expect(await same('jobs.bringBack', { id })).toEqual({})
    expect(await same('jobs.removed', {})).toEqual([])
  })
  test('everything.export, but for the time, and everything.import of it', async () => {
    const files = (await through('everything.export', {})) as { result: { text: string } }[]
    const [direct, ...others] = files.map(({ result }) => ({ ...JSON.parse(result.text), madeAt: '' }))
    for (const other of others) expect(other).toEqual(direct)
    answered.add('everything.export')
    expect(await same('everything.import', { text: files[0]?.result.text })).toMatchObject({
      jobs: 0,
      offcuts: 0,
    })
  })
})

describe('through every door the same refusal comes to', () => {
  test.each([
    ['no.such.method', {}, 'unknown-method'],
    ['__proto__', {}, 'unknown-method'],
    ['jobs.open', { id: 'nothing' }, 'not-found'],
    ['jobs.open', {}, 'bad-input'],
    ['jobs.open', { id: 7 }, 'bad-input'],
    ['jobs.list', { extra: 1 }, 'bad-input'],
    ['estimate.run', { edit: -1, statement: {} }, 'bad-input'],
    ['prices.import', {}, 'bad-input'],
    ['estimate.run', 'a text', 'bad-input'],
    ['sizing.run', { edit: 1, statement: {}, held: ['size.width'] }, 'bad-input'],
    ['ground.run', { statement: {}, found: { post: 0, dx: 1, dy: 0, barred: false } }, 'bad-input'],
    ['cutlist.run', { text: '9 ft', kerf: -1, endTrim: 0 }, 'bad-input'],
    ['cutlist.run', { text: '9 ft', kerf: 4, endTrim: 0, columns: ['width'] }, 'bad-input'],
    ['day.replan', { statement: {}, planId: 'x', day: { bought: 'some' } }, 'bad-input'],
    ['offcuts.add', { product: { size: '2x9' }, length: 1, count: 1, fromJob: '' }, 'bad-input'],
    ['offcuts.takeFromPlan', { jobId: 'nothing' }, 'not-found'],
    ['compare.run', { edit: 1, statement: {}, from: 0, to: -5, step: 0 }, 'bad-input'],
  ])('%s of %j', async (method, input, code) => {
    const [direct, browser, desktop] = await through(method, input)
    expect(direct).toMatchObject({ code })
    expect((direct as { message: string }).message).toMatch(/^[A-Za-z].*\.$/s)
    expect(browser).toEqual(direct)
    expect(desktop).toEqual(direct)
  })
})

test('every method of the contract was called above', async () => {
  const { INPUTS } = await import('../../main/app/inputs.ts')
  expect([...answered].sort()).toEqual(Object.keys(INPUTS).sort())
})
