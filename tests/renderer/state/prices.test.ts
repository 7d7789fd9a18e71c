import { expect, test, vi } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { SAMPLE_BOOK, stalePrices } from '../../../core/pricing/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client, EventName, Events, Methods } from '../../../shared/contract/index.ts'

const sample = {
  book: SAMPLE_BOOK,
  importedAt: null,
  age: 24,
  isOld: false,
  stale: stalePrices(SAMPLE_BOOK, '2026-11-25'),
  lastChange: null,
  nextChange: null,
}
const stored = { id: 'a', name: 'Heron Lane', savedAt: '2026-11-25T10:42:00Z', revision: 1, recovered: false }

/** A machine that keeps one job and prices, and makes no estimates; what it was asked is written down. */
function machine(taken: Methods['prices.import'][1]) {
  const asked: string[] = []
  const listeners = new Map<EventName, (data: never) => void>()
  const client: Client = {
    async call(method) {
      asked.push(method)
      if (method === 'jobs.last')
        return {
          ...stored,
          statement: DEMO_JOB,
          timeline: { first: 0, states: [DEMO_JOB], labels: [], at: 0 },
        } as never
      if (method === 'prices.current') return sample as never
      if (method === 'prices.import') return taken as never
      throw new CallError('internal', 'This is not kept here.')
    },
    on(event, listener) {
      listeners.set(event, listener)
      return () => listeners.delete(event)
    },
  }
  const tell = <E extends EventName>(event: E, data: Events[E]) => listeners.get(event)?.(data as never)
  const session = createSession(client, () => ({ design: () => undefined, dispose: () => undefined }))
  return { session, asked, tell, state: () => session.store.getState() }
}

test('a faulty price book leaves prices and estimate, and its faults are told until one is taken', async () => {
  const faults = [
    { path: 'labour.rate', message: 'is not money', fix: 'write "$60.00"', line: 7, column: 13 },
  ]
  const { session, asked, state } = machine({ ok: false, faults })
  await session.openLast()
  await session.takePrices('{')
  expect(state().priceFileFaults).toEqual(faults)
  expect(state().prices).toEqual(sample)
  expect(asked.filter((method) => method === 'prices.current')).toHaveLength(1)
  session.dispose()
})

test('where prices changed, in this window or another, they are read and the job is estimated anew', async () => {
  vi.useFakeTimers()
  const { session, asked, tell, state } = machine({ ok: true, prices: sample })
  await session.openLast()
  await vi.advanceTimersByTimeAsync(100)
  const edit = state().edit
  asked.length = 0
  tell('prices.changed', { name: 'The yard', date: '2026-11-20' })
  await vi.advanceTimersByTimeAsync(100)
  expect(asked).toEqual(['prices.current', 'estimate.run'])
  expect(state().edit).toBe(edit + 1)
  expect(state().history.past).toEqual([])
  session.dispose()
  vi.useRealTimers()
})

test('a machine that fails is told in its sentence, and nothing is taken', async () => {
  const { session, state } = machine({ ok: true, prices: sample })
  await session.openLast()
  await session.backToSamplePrices()
  expect(state().notice).toBe('This is not kept here.')
  expect(await session.priceFile()).toBe(null)
  session.dispose()
})
