import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { Estimate } from '../../../core/estimate-types.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client, Methods } from '../../../shared/contract/index.ts'
import { stored } from '../../fixtures/opened-session.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

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

/** How many estimates are asked for over four edits a fifth of a second apart, and the time after them. */
async function askedOver(whole: number): Promise<number> {
  const { session, asked } = await opened(whole, 100)
  await vi.advanceTimersByTimeAsync(3_000)
  asked.length = 0
  for (const width of ['18 ft', '19 ft', '20 ft', '21 ft']) {
    session.state('size.width', width, 'Width')
    await vi.advanceTimersByTimeAsync(200)
  }
  await vi.advanceTimersByTimeAsync(5_000)
  session.dispose()
  return asked.filter((method) => method === 'estimate.run').length
}

test('where estimates take long, those of edits in a row are not begun only to be stopped', async () => {
  expect(await askedOver(2_000)).toBe(1)
})

test('where they are quick, figures follow each edit', async () => {
  expect(await askedOver(100)).toBe(4)
})
