import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB, type JobStatement } from '../../../core/job/index.ts'
import { framingPlan } from '../../../core/papers/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import type { StartDesigner } from '../../../renderer/state/designer-port.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client, Methods, StoredJob } from '../../../shared/contract/index.ts'

const stored: StoredJob = {
  id: 'a',
  name: 'Heron Lane',
  savedAt: '2026-11-25T10:42:00Z',
  revision: 1,
  statement: DEMO_JOB,
  timeline: { first: 0, states: [], labels: [], at: 0 },
  recovered: false,
}

type Call = { readonly method: string; readonly input: unknown }

/** A machine that keeps jobs and makes no estimates; what it was asked is written down. */
function machine(answers: { save?: (input: Methods['jobs.save'][0]) => Methods['jobs.save'][1] } = {}) {
  const calls: Call[] = []
  const client: Client = {
    async call(method, input) {
      calls.push({ method, input })
      if (method === 'jobs.last' || method === 'jobs.open') return stored as never
      if (method === 'jobs.save') {
        const given = input as Methods['jobs.save'][0]
        return (answers.save?.(given) ?? {
          revision: given.revision + 1,
          savedAt: '2026-11-25T10:43:00Z',
        }) as never
      }
      if (method === 'compare.run') return { edit: 0, complete: false, rows: 0 } as never
      throw new CallError('stopped', 'no estimate here')
    },
    on: () => () => undefined,
  }
  return {
    client,
    calls,
    saves: () =>
      calls
        .filter((call) => call.method === 'jobs.save')
        .map((call) => call.input as Methods['jobs.save'][0]),
  }
}

/** The cheap stages in this thread, answering at once. */
const designHere: StartDesigner = (onAnswer) => ({
  design(edit: number, statement: JobStatement) {
    const made = design(statement)
    onAnswer(
      made.ok
        ? { edit, ok: true, design: made.value, drawing: framingPlan(made.value) }
        : { edit, ok: false, faults: made.error },
    )
  },
  dispose: () => undefined,
})

async function opened(answers = {}) {
  const host = machine(answers)
  const session = createSession(host.client, designHere)
  await session.openLast()
  return { ...host, session, state: () => session.store.getState() }
}

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

describe('an open job', () => {
  test('shows the deck of its statement', async () => {
    const { state } = await opened()
    expect(state().design?.job.name).toBe('Heron Lane')
    expect(state().drawing?.primitives.length).toBeGreaterThan(20)
  })

  test('is saved within a second of a change, under the name of the step', async () => {
    const { session, saves } = await opened()
    session.state('size.width', '24 ft', `Width 24'-0"`)
    await vi.advanceTimersByTimeAsync(1000)
    expect(saves().map(({ label, revision }) => [label, revision])).toEqual([[`Width 24'-0"`, 1]])
  })

  test('is saved within a second while typing never pauses', async () => {
    const { session, saves } = await opened()
    for (let i = 0; i < 12; i += 1) {
      session.stateLive('size.width', `${20 + i} ft`, 'Width')
      await vi.advanceTimersByTimeAsync(100)
    }
    expect(saves().length).toBeGreaterThan(0)
  })

  test('keeps the last deck in view and the fault named where a statement cannot be built', async () => {
    const { session, state } = await opened()
    session.state('size.width', '1 ft', 'Width 1 ft')
    expect(state().faults.map((fault) => fault.path)).toContain('size.width')
    expect(state().design?.job.size.width).toBe(23.5 * 384)
    session.undo()
    expect(state().faults).toEqual([])
  })

  test('says a conflict and saves nothing more until it is settled', async () => {
    const { session, state, saves } = await opened({
      save: () => {
        throw new CallError('conflict', 'This job was changed in another window.')
      },
    })
    session.state('size.width', '24 ft', 'Width')
    await vi.advanceTimersByTimeAsync(1000)
    expect(state().saving).toEqual({ state: 'conflict', message: 'This job was changed in another window.' })
    session.state('size.width', '25 ft', 'Width')
    await vi.advanceTimersByTimeAsync(5000)
    expect(saves().length).toBe(1)
  })

  test('tries a failed save again by itself', async () => {
    let down = true
    const { session, state } = await opened({
      save: () => {
        if (down) throw new CallError('unreachable', 'no answer')
        return { revision: 2, savedAt: '2026-11-25T10:44:00Z' }
      },
    })
    session.state('size.width', '24 ft', 'Width')
    await vi.advanceTimersByTimeAsync(1000)
    expect(state().saving.state).toBe('failed')
    down = false
    await vi.advanceTimersByTimeAsync(3500)
    expect(state().saving).toEqual({ state: 'saved', at: '2026-11-25T10:44:00Z' })
  })

  test('asks for the tape once typing has paused, and not again where only the width moves on it', async () => {
    const { session, calls } = await opened()
    const asked = () => calls.filter((call) => call.method === 'compare.run').length
    await vi.advanceTimersByTimeAsync(300)
    expect(asked()).toBe(1)
    session.state('size.width', '24 ft', 'Width')
    await vi.advanceTimersByTimeAsync(300)
    expect(asked()).toBe(1)
    session.state('size.depth', '12 ft', 'Depth')
    await vi.advanceTimersByTimeAsync(300)
    expect(asked()).toBe(2)
  })
})
