import { join } from 'node:path'
import { afterEach, describe, expect, test } from 'vitest'
import type { CompareRow, WidthRange } from '../../../core/compare/index.ts'
import type { EstimateResult } from '../../../core/estimate-types.ts'
import type { JobStatement } from '../../../core/job/index.ts'
import type { PriceBook } from '../../../core/pricing/index.ts'
import { ticks } from '../../../core/units/index.ts'
import { CompareRuns } from '../../../main/workers/compare-runs.ts'
import { EstimateQueue } from '../../../main/workers/estimate-queue.ts'
import { createPool, type Pool, Stopped } from '../../../main/workers/index.ts'
import { LatestRun } from '../../../main/workers/latest-run.ts'

const WORKER = join(import.meta.dirname, 'fake-worker.ts')
const BOOK = { name: 'book' } as PriceBook
const TEN = { from: ticks(1), to: ticks(10), step: ticks(1) }

let open: Pool[] = []
afterEach(async () => {
  await Promise.all(open.map((pool) => pool.close()))
  open = []
})

function pool(): Pool {
  // patient, so that a busy machine decides no result
  const made = createPool({ workerPath: WORKER, patience: 120_000 })
  open.push(made)
  return made
}

function edit(statement: JobStatement) {
  return { statement, book: BOOK, givesWay: true }
}

/** The fake answers with the job's name as path and how many jobs it has worked as message. */
function nameOf(result: EstimateResult): string | undefined {
  return result.ok ? undefined : result.faults[0]?.path
}
function workedOf(result: EstimateResult): number {
  return result.ok ? 0 : Number(result.faults[0]?.message)
}

describe('estimates', () => {
  test('of edits waiting behind a running one only the newest is worked; the others say they were stopped', async () => {
    const { estimate } = pool()
    const first = estimate(edit({ name: 'first', busy: 100 }))
    const second = estimate(edit({ name: 'second' }))
    const third = estimate(edit({ name: 'third' }))
    await expect(second).rejects.toBeInstanceOf(Stopped)
    expect(nameOf(await first)).toBe('first')
    expect(workedOf(await third)).toBe(2)
  })

  test('one asked for by name is worked even when newer edits come', async () => {
    const { estimate } = pool()
    const running = estimate(edit({ name: 'running', busy: 50 }))
    const workbook = estimate({ statement: { name: 'workbook' }, book: BOOK, givesWay: false })
    const newer = estimate(edit({ name: 'newer' }))
    expect(nameOf(await workbook)).toBe('workbook')
    expect(nameOf(await newer)).toBe('newer')
    expect(nameOf(await running)).toBe('running')
  })

  test('the same job with the same prices is not worked twice, whatever the order of its fields', async () => {
    const { estimate } = pool()
    await estimate(edit({ name: 'same', busy: 0 }))
    expect(workedOf(await estimate(edit({ busy: 0, name: 'same' })))).toBe(1)
    const other = await estimate({ ...edit({ name: 'same', busy: 0 }), book: { ...BOOK, name: 'dearer' } })
    expect(workedOf(other)).toBe(2)
  })

  test('an estimate that keeps a newer edit waiting too long is stopped, and the newer one is worked', async () => {
    const queue = new EstimateQueue(WORKER, 100)
    const endless = queue.run(edit({ name: 'endless', busy: 60_000 }))
    const newer = queue.run(edit({ name: 'newer' }))
    await expect(endless).rejects.toBeInstanceOf(Stopped)
    expect(nameOf(await newer)).toBe('newer')
    await queue.close()
  })

  test('one that hears nothing in the solver is ended when it is stopped, and answers with the plans it had found', async () => {
    const { estimate, stop } = pool()
    const result = await estimate({
      ...edit({ deaf: true }),
      task: 'mine',
      onProgress: () => expect(stop('mine')).toBe(true),
    })
    expect(nameOf(result)).toBe('joists at 8, beams at 5')
    expect(nameOf(await estimate(edit({ name: 'after' })))).toBe('after')
  })

  test('a bug in the calculation is told in one line, and the next estimate works', async () => {
    const { estimate } = pool()
    await expect(estimate(edit({ throws: true }))).rejects.toThrow(/^a bug$/)
    expect(nameOf(await estimate(edit({ name: 'after' })))).toBe('after')
  })

  test('a worker that dies fails its request and is replaced', async () => {
    const { estimate } = pool()
    await expect(estimate(edit({ dies: true }))).rejects.toThrow('The calculation stopped unexpectedly')
    expect(nameOf(await estimate(edit({ name: 'after' })))).toBe('after')
  })

  test('closing stops what runs and what waits', async () => {
    const made = pool()
    const running = expect(made.estimate(edit({ busy: 60_000 }))).rejects.toThrow('the program is closing')
    const waiting = expect(made.estimate(edit({ name: 'waiting' }))).rejects.toThrow('the program is closing')
    await made.close()
    await running
    await waiting
  })
})

describe('cut lists', () => {
  const list = (statement: JobStatement) => ({
    request: { text: JSON.stringify(statement), kerf: ticks(4), endTrim: ticks(0) },
    book: BOOK,
  })

  test('a newer one stops the one before, in the middle', async () => {
    const lists = pool()
    const first = lists.cutList(list({ busy: 60_000 }))
    const second = lists.cutList(list({}))
    await expect(first).rejects.toBeInstanceOf(Stopped)
    // a fresh worker has worked one
    expect(await second).toEqual({ ok: false, faults: [{ row: 1 }] })
  })

  test('a bug is told in one line, a death too, and the next is worked', async () => {
    const lists = pool()
    await expect(lists.cutList(list({ throws: true }))).rejects.toThrow(/^a bug$/)
    await expect(lists.cutList(list({ dies: true }))).rejects.toThrow(/stopped unexpectedly/)
    expect(await lists.cutList(list({}))).toMatchObject({ ok: false })
  })

  test('a watched one tells how far it is, and stopped by its name answers with what it has', async () => {
    const lists = pool()
    const told: number[] = []
    const running = lists.cutList(list({ untilStopped: true }), {
      task: 'mine',
      onProgress: ({ best }) => told.push(best ?? 0),
    })
    await expect.poll(() => told.length, { timeout: 30_000 }).toBeGreaterThan(2)
    expect(lists.stop('another')).toBe(false)
    expect(lists.stop('mine')).toBe(true)
    expect(await running).toEqual({ ok: false, faults: [{ row: expect.any(Number) }] })
    expect(told).toEqual(told.toSorted((a, b) => b - a))
    expect(lists.stop('mine')).toBe(false)
    // the same worker goes on with the next
    expect(await lists.cutList(list({}))).toMatchObject({ ok: false })
  })

  test('one that hears nothing in the solver is ended, and answers with the plans it had found', async () => {
    const lists = pool()
    const answer = await lists.cutList(list({ deaf: true }), {
      task: 'mine',
      onProgress: () => expect(lists.stop('mine')).toBe(true),
    })
    expect(answer).toEqual({ ok: false, faults: [{ row: 'joists at 8, beams at 5' }] })
    // the next is worked from its start, without plans of another
    expect(await lists.cutList(list({}))).toMatchObject({ ok: false, faults: [{ row: 1 }] })
  })

  test('closing stops what runs and refuses what comes', async () => {
    const lists = createPool({ workerPath: WORKER })
    const running = lists.cutList(list({ busy: 60_000 }))
    const stopped = expect(running).rejects.toBeInstanceOf(Stopped)
    await lists.close()
    await stopped
    await expect(lists.cutList(list({}))).rejects.toBeInstanceOf(Stopped)
  })
})

describe('a worker of one kind', () => {
  const lists = (idle: number) =>
    new LatestRun<JobStatement, unknown>({
      workerPath: WORKER,
      idle,
      request: (id, statement) => ({
        kind: 'cut list',
        id,
        request: { text: JSON.stringify(statement), kerf: ticks(4), endTrim: ticks(0) },
        book: BOOK,
      }),
      answer: (answer) => (answer.kind === 'cut list' ? { value: answer.answer } : null),
    })
  const worked = (count: number) => ({ ok: false, faults: [{ row: count }] })

  test('is kept warm for the next run', async () => {
    const run = lists(60_000)
    expect(await run.run({})).toEqual(worked(1))
    expect(await run.run({})).toEqual(worked(2))
    await run.close()
  })

  test('ends where it had nothing to do, and the next run starts a fresh one', async () => {
    const run = lists(1)
    expect(await run.run({})).toEqual(worked(1))
    await new Promise((resolve) => setTimeout(resolve, 20))
    expect(await run.run({})).toEqual(worked(1))
    await run.close()
  })

  test('is not ended in the middle of a run that took the place of another', async () => {
    const run = lists(30)
    const before = expect(run.run({ busy: 60_000 })).rejects.toBeInstanceOf(Stopped)
    expect(await run.run({ busy: 400 })).toEqual(worked(1))
    await before
    await run.close()
  })

  test('that compares sizes ends too, and the next comparison starts a fresh one', async () => {
    const run = new CompareRuns(WORKER, 1)
    const sides = { from: ticks(1), to: ticks(2), step: ticks(1) }
    const boards: unknown[] = []
    const compare = () =>
      run.run({
        statement: {},
        book: BOOK,
        grid: { width: sides, depth: sides },
        onRow: (row) => boards.push(row.boards),
      })
    expect(await compare()).toEqual({ complete: true, rows: 2 })
    await new Promise((resolve) => setTimeout(resolve, 20))
    await compare()
    expect(boards).toEqual([1, 2, 1, 2])
    await run.close()
    expect(await compare(), 'nothing is started anew').toEqual({ complete: false, rows: 0 })
  })
})

describe('comparisons', () => {
  test('rows stream in the order they are worked, then the end says that it is complete', async () => {
    const seen: number[] = []
    const end = await pool().compare({
      statement: {},
      book: BOOK,
      range: TEN,
      onRow: (row: CompareRow) => seen.push(row.width),
    })
    expect(end).toEqual({ complete: true, rows: 10 })
    expect(seen).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
  })

  test.each([
    ['between two rows', 20],
    ['in the middle of a row that takes a minute', 60_000],
  ])('a new comparison stops the one before without waiting for it, %s', async (_where, busy) => {
    const { compare } = pool()
    await compare({ statement: { name: 'warm' }, book: BOOK, range: TEN, onRow: () => undefined })
    const late: number[] = []
    const old = compare({ statement: { busy }, book: BOOK, range: TEN, onRow: (row) => late.push(row.width) })
    await new Promise((resolve) => setTimeout(resolve, 50))
    const before = performance.now()
    const heard = late.length
    const newer = compare({ statement: { name: 'newer' }, book: BOOK, range: TEN, onRow: () => undefined })
    expect(await old).toEqual({ complete: false, rows: heard })
    // 60 ms of grace and a new thread; the rest is room for a busy machine
    expect(performance.now() - before).toBeLessThan(2000)
    expect(await newer).toEqual({ complete: true, rows: 10 })
    expect(late).toHaveLength(heard)
  })

  /** Runs a comparison and answers its end, the widths told, and how much work the fake had done at the last row. */
  async function watched(made: Pool, statement: JobStatement, range: WidthRange) {
    const rows: CompareRow[] = []
    const end = await made.compare({ statement, book: BOOK, range, onRow: (row) => rows.push(row) })
    return { end, seen: rows.map((row) => row.width), worked: Math.max(...rows.map((row) => row.boards)) }
  }
  const deck = (width: string, depth: string) => ({ size: { width, depth } })

  test('another width of the same deck gets the rows already worked, another depth does not', async () => {
    const made = pool()
    await watched(made, deck('16 ft', '12 ft'), TEN)
    const again = await watched(made, deck('18 ft', '12 ft'), TEN)
    expect(again.end).toEqual({ complete: true, rows: 10 })
    expect(again.seen).toHaveLength(10)
    expect(again.worked).toBe(10)
    expect((await watched(made, deck('18 ft', '13 ft'), TEN)).worked).toBe(20)
  })

  test('a range that moved works only the widths that are new', async () => {
    const made = pool()
    await watched(made, deck('16 ft', '12 ft'), TEN)
    const moved = await watched(made, deck('16 ft', '12 ft'), { ...TEN, from: ticks(4), to: ticks(12) })
    expect(moved.seen).toEqual([4, 5, 6, 7, 8, 9, 10, 11, 12])
    expect(moved.end).toEqual({ complete: true, rows: 9 })
    expect(moved.worked).toBe(12)
  })

  test('widths between the steps are told only where they are asked for', async () => {
    const made = pool()
    const exact = { ...TEN, exactFits: true }
    expect((await watched(made, {}, exact)).seen).toContain(1.5)
    expect((await watched(made, {}, TEN)).seen).not.toContain(1.5)
    const again = await watched(made, {}, exact)
    expect(again.seen.filter((width) => width === 1.5)).toHaveLength(1)
    expect(again.end.rows).toBe(11)
  })

  test('after a comparison was stopped its rows are kept and the rest is worked', async () => {
    const made = pool()
    const statement = { busy: 20 }
    const stopped = watched(made, statement, TEN)
    await new Promise((resolve) => setTimeout(resolve, 300))
    await watched(made, { name: 'other' }, TEN)
    await stopped
    const rest = await watched(made, statement, TEN)
    expect(rest.end).toEqual({ complete: true, rows: 10 })
    expect([...rest.seen].sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
  })

  test('rows that are not proven are told again and worked again, unless a whole comparison left them so', async () => {
    const made = pool()
    const statement = { busy: 200, unproven: true }
    const stopped = watched(made, statement, TEN)
    await new Promise((resolve) => setTimeout(resolve, 300))
    await watched(made, { name: 'other' }, TEN)
    const early = (await stopped).seen
    const whole = await watched(made, statement, TEN)
    expect(whole.seen.slice(0, early.length)).toEqual(early)
    expect(whole.seen.slice(early.length)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
    expect((await watched(made, statement, TEN)).seen).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
  })

  test('an estimate does not wait for a comparison', async () => {
    const { compare, estimate } = pool()
    const comparing = compare({ statement: { busy: 100 }, book: BOOK, range: TEN, onRow: () => undefined })
    const result = await estimate(edit({ name: 'quick' }))
    expect(nameOf(result)).toBe('quick')
    const other = compare({ statement: {}, book: BOOK, range: TEN, onRow: () => undefined })
    expect((await comparing).complete).toBe(false)
    await other
  })
})
