import { expect, test, vi } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client } from '../../../shared/contract/index.ts'

/** A machine that prices sizes until it is told to stop. */
function machine() {
  const stopped: string[] = []
  let end: (answer: unknown) => void = () => undefined
  const client: Client = {
    async call(method, input) {
      if (method === 'jobs.last')
        return {
          id: 'a',
          name: 'Heron Lane',
          savedAt: '2026-11-25T10:42:00Z',
          revision: 1,
          recovered: false,
          statement: DEMO_JOB,
          timeline: { first: 0, states: [DEMO_JOB], labels: [], at: 0 },
        } as never
      if (method === 'sizes.run') return new Promise((done) => (end = done)) as never
      if (method === 'work.stop') {
        stopped.push((input as { task: string }).task)
        end({ edit: 1, complete: false, rows: 0 })
        return { stopped: true } as never
      }
      throw new CallError('internal', 'This is not kept here.')
    },
    on: () => () => undefined,
  }
  const session = createSession(client, () => ({ design: () => undefined, dispose: () => undefined }))
  return { session, stopped }
}

test('closing the compared sizes ends their pricing, which nobody would see', async () => {
  const { session, stopped } = machine()
  await session.openLast()
  const made = design(DEMO_JOB)
  if (!made.ok) throw new Error('the demo is a deck')
  session.store.setState({ design: made.value })
  const compared = session.compareSizes()
  expect(session.store.getState().tasks['size grid']).toBeDefined()
  session.closeSizes()
  await compared
  expect(stopped).toEqual([expect.stringMatching(/^size grid:/)])
  await vi.waitFor(() => expect(session.store.getState().tasks['size grid']).toBeUndefined())
  expect(session.store.getState().sizeGrid).toBeNull()
  session.dispose()
})
