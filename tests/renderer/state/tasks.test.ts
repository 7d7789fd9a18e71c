import { expect, test } from 'vitest'
import { createStore } from 'zustand/vanilla'
import { CLOSED } from '../../../renderer/state/closed-session.ts'
import type { SessionState } from '../../../renderer/state/session-types.ts'
import { tasks } from '../../../renderer/state/tasks.ts'
import type { Client, Events } from '../../../shared/contract/index.ts'

function machine() {
  const stopped: string[] = []
  let tell: (data: Events['work.progress']) => void = () => undefined
  const client: Client = {
    call: async (_method, input) => {
      stopped.push((input as { task: string }).task)
      return { stopped: true } as never
    },
    on: (_event, listener) => {
      tell = listener as never
      return () => undefined
    },
  }
  const store = createStore<SessionState>(() => CLOSED)
  const get = store.getState
  const work = tasks({ client, store, get, set: (patch) => store.setState(patch) })
  return { work, stopped, tell: (data: Events['work.progress']) => tell(data), running: () => get().tasks }
}

const progress = { subject: 'list', part: 1, parts: 1, bound: 1, best: 2, lengthUnit: null }

test('work is shown with its own progress while it runs, stopped by its name, and gone with its answer', async () => {
  const { work, stopped, tell, running } = machine()
  let answer: (value: string) => void = () => undefined
  let name = ''
  const done = work.watched('cut list', (task) => {
    name = task
    return new Promise<string>((resolve) => {
      answer = resolve
    })
  })
  expect(running()['cut list']).toEqual({ task: name, progress: null, stopping: false })
  tell({ task: 'cut list:of another window', progress })
  expect(running()['cut list']?.progress).toBeNull()
  tell({ task: name, progress })
  expect(running()['cut list']?.progress).toEqual(progress)
  work.stopTask('sizes')
  work.stopTask('cut list')
  expect(stopped).toEqual([name])
  expect(running()['cut list']?.stopping).toBe(true)
  answer('the best so far')
  expect(await done).toBe('the best so far')
  expect(running()).toEqual({})
})

test('an older run that ends late does not hide the newer one', async () => {
  const { work, running } = machine()
  let end: () => void = () => undefined
  const old = work.watched('estimate', () => new Promise<void>((resolve) => (end = resolve)))
  void work.watched('estimate', () => new Promise<void>(() => undefined))
  const newer = running().estimate?.task
  end()
  await old
  expect(running().estimate?.task).toBe(newer)
})
