import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { Estimate } from '../../../core/estimate-types.ts'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client, Methods, StoredJob } from '../../../shared/contract/index.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

const stored: StoredJob = {
  id: 'a',
  name: 'Heron Lane',
  savedAt: '2026-11-25T10:42:00Z',
  revision: 1,
  statement: DEMO_JOB,
  timeline: { first: 0, states: [], labels: [], at: 0 },
  recovered: false,
}

/** A session whose machine takes some time for an estimate, and as long as it is told for first plans. */
async function opened(whole: number, first: number) {
  const asked: string[] = []
  const estimate = (name: string) => ({ name, plans: [], pricing: null }) as unknown as Estimate
  const after = (ms: number, value: unknown) =>
    new Promise<never>((done) => setTimeout(() => done(value as never), ms))
  const client: Client = {
    call(method, input) {
      asked.push(method)
      if (method === 'jobs.last') return Promise.resolve(stored as never)
      const edit = (input as { edit?: number }).edit ?? 0
      const answer = (name: string): Methods['estimate.run'][1] => ({
        edit,
        result: { ok: true, estimate: estimate(name) },
      })
      if (method === 'estimate.run') return after(whole, answer('whole'))
      if (method === 'estimate.first') return after(first, answer('first'))
      return Promise.reject(new CallError('stopped', 'not here'))
    },
    on: () => () => undefined,
  }
  const session = createSession(client, () => ({ design: () => undefined, dispose: () => undefined }))
  await session.openLast()
  const shown = () => {
    const { estimate, estimateEdit, edit } = session.store.getState()
    return [(estimate as unknown as { name: string } | null)?.name ?? null, estimateEdit === edit]
  }
  return { session, asked, shown }
}

test('an estimate that takes long is shown from first plans meanwhile, as one that is being worked out', async () => {
  const { session, shown } = await opened(8_000, 300)
  await vi.advanceTimersByTimeAsync(600)
  const before = shown()
  await vi.advanceTimersByTimeAsync(600)
  expect(before[0]).toBe(null)
  expect(shown()).toEqual(['first', false])
  await vi.advanceTimersByTimeAsync(8_000)
  expect(shown()).toEqual(['whole', true])
  session.dispose()
})

test('a quick estimate asks for no first plans', async () => {
  const { session, asked, shown } = await opened(300, 100)
  await vi.advanceTimersByTimeAsync(2_000)
  expect(asked).not.toContain('estimate.first')
  expect(shown()).toEqual(['whole', true])
  session.dispose()
})

test('first plans that come late, after the whole estimate, change nothing', async () => {
  const { session, shown } = await opened(1_000, 3_000)
  await vi.advanceTimersByTimeAsync(6_000)
  expect(shown()).toEqual(['whole', true])
  session.dispose()
})
