import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { DEMO_JOB, statedValue } from '../../../../core/job/index.ts'
import { inches } from '../../../../core/units/index.ts'
import { type Grip, gripsOf } from '../../../../renderer/state/grips/index.ts'
import { openedSession } from '../../../fixtures/opened-session.ts'

/** Heron Lane: 23 ft 6 in wide, four posts, the second 98 in from the beam's left end (worked by hand). */
async function opened() {
  const { session, state } = await openedSession()
  const grip = (id: string): Grip => {
    const { design } = state()
    const found = design && gripsOf(design).find((each) => each.id === id)
    if (!found) throw new Error(`${id} cannot be moved`)
    return found
  }
  return { session, state, grip, moved: () => statedValue(state().history.present, 'ground.moved') }
}

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

describe('a post that is moved', () => {
  test('takes the deck with it all the way, and is one step', async () => {
    const { session, state, grip } = await opened()
    session.takeHold(grip('post-front-2'))
    for (const at of [99, 100, 104]) {
      session.moveHeld([inches(at)])
      expect(state().design?.frame.posts[1]?.x).toBe(inches(at))
    }
    session.letGo()
    expect(state().history.past.map(({ label }) => label)).toEqual(['Post 2 8\'-8" from the beam’s left end'])
    expect(state().held).toBeNull()
    session.undo()
    expect(state().history.present).toEqual(DEMO_JOB)
  })

  test('is where it was once the move is given up, and nothing was done', async () => {
    const { session, state, grip, moved } = await opened()
    session.takeHold(grip('post-front-2'))
    session.moveHeld([inches(120)])
    session.giveUpMove()
    expect(moved()).toBeUndefined()
    expect(state().history.past).toEqual([])
    expect(state().design?.frame.posts[1]?.x).toBe(inches(98))
  })

  test('back at its place states nothing', async () => {
    const { session, state, grip, moved } = await opened()
    session.takeHold(grip('post-front-2'))
    session.moveHeld([inches(120)])
    session.moveHeld([inches(98)])
    session.letGo()
    expect(moved()).toBeUndefined()
    expect(state().history.past).toEqual([])
  })
})

test('a place that cannot be built gives way to the last one that can, which is said', async () => {
  const { session, state, grip } = await opened()
  session.takeHold(grip('beam-front'))
  session.moveHeld([inches(30)])
  // a setback longer than the deck leaves no span: the pointer cannot go there, but a step may
  session.moveHeld([inches(160)])
  expect(state().faults).not.toEqual([])
  session.letGo()
  expect(state().faults).toEqual([])
  expect(state().design?.job.frame.beams.front.setback).toBe(inches(30))
  expect(state().notice).toContain('stays at the last place that can be built')
  expect(state().history.past).toHaveLength(1)
})

test('what is held is let go when something else is taken', async () => {
  const { session, state, grip } = await opened()
  session.takeHold(grip('post-front-2'))
  session.moveHeld([inches(99)])
  session.takeHold(grip('edge-2'))
  session.moveHeld([inches(24 * 12)])
  session.letGo()
  expect(state().history.past.map(({ label }) => label)).toEqual([
    'Post 2 8\'-3" from the beam’s left end',
    'Width 24\'-0"',
  ])
})
