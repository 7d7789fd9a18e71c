import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { Estimate } from '../../../core/estimate-types.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { openedSession } from '../../fixtures/opened-session.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

describe('an open job', () => {
  test('shows the deck of its statement', async () => {
    const { state } = await openedSession()
    expect(state().design?.job.name).toBe('Heron Lane')
    expect(state().drawing?.primitives.length).toBeGreaterThan(20)
  })

  test('is saved within a second of a change, under the name of the step', async () => {
    const { session, saves } = await openedSession()
    session.state('size.width', '24 ft', `Width 24'-0"`)
    await vi.advanceTimersByTimeAsync(1000)
    expect(saves().map(({ label, revision }) => [label, revision])).toEqual([[`Width 24'-0"`, 1]])
  })

  test('is saved within a second while typing never pauses', async () => {
    const { session, saves } = await openedSession()
    for (let i = 0; i < 12; i += 1) {
      session.stateLive('size.width', `${20 + i} ft`, 'Width')
      await vi.advanceTimersByTimeAsync(100)
    }
    expect(saves().length).toBeGreaterThan(0)
  })

  test('keeps its estimate where only what the job took, a name or a note changes', async () => {
    const { session, state, calls } = await openedSession()
    await vi.advanceTimersByTimeAsync(1000)
    const asked = () => calls.filter(({ method }) => method === 'estimate.run').length
    session.store.setState({ estimateEdit: state().edit, estimate: state().design as Estimate | null })
    const before = asked()
    session.state('costing.bought', [{ what: 'Tarp', amount: '19.99' }], 'bought: Tarp')
    session.state('customer.name', 'A customer', 'customer')
    session.undo()
    await vi.advanceTimersByTimeAsync(100)
    expect(asked()).toBe(before)
    expect(state().estimateEdit).toBe(state().edit)
    expect(state().design?.job.costing.bought).toHaveLength(1)
    expect(state().estimate?.job.costing.bought).toHaveLength(1)
    session.state('size.width', '24 ft', 'Width')
    await vi.advanceTimersByTimeAsync(100)
    expect(asked()).toBe(before + 1)
  })

  test('keeps the last deck in view and the fault named where a statement cannot be built', async () => {
    const { session, state } = await openedSession()
    session.state('size.width', '1 ft', 'Width 1 ft')
    expect(state().faults.map((fault) => fault.path)).toContain('size.width')
    expect(state().design?.job.size.width).toBe(23.5 * 384)
    session.undo()
    expect(state().faults).toEqual([])
  })

  test('says a conflict and saves nothing more until it is settled', async () => {
    const { session, state, saves } = await openedSession({
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
    const { session, state } = await openedSession({
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
    const { session, calls } = await openedSession()
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
