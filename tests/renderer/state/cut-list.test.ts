import { describe, expect, test } from 'vitest'
import type { CutListAnswer } from '../../../core/cut-list/index.ts'
import { inches } from '../../../core/units/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import {
  cutListRequest,
  inputsOf,
  isFresh,
  NO_CUT_LIST,
  readSaw,
} from '../../../renderer/state/cut-list-state.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client } from '../../../shared/contract/index.ts'

const empty: CutListAnswer = { ok: true, result: { plans: [], infeasible: [], book: null, remarks: [] } }
const refused: CutListAnswer = { ok: false, faults: [] }

/** A session on a machine that answers cut lists when the test says so. */
function session() {
  const waiting: { resolve(answer: CutListAnswer): void; reject(error: Error): void }[] = []
  const client: Client = {
    call: () => new Promise<never>((resolve, reject) => waiting.push({ resolve: resolve as never, reject })),
    on: () => () => undefined,
  }
  const made = createSession(client, () => ({ design: () => undefined, dispose: () => undefined }))
  return { made, waiting, list: () => made.store.getState().cutList }
}

describe('the cut list’s inputs', () => {
  test('a kerf is read as a length within its bounds, or refused in a sentence', () => {
    expect(readSaw('cutting.kerf', '3/32')).toEqual({ ok: true, value: inches(3 / 32) })
    expect(readSaw('cutting.kerf', '2 in')).toMatchObject({
      ok: false,
      error: expect.stringMatching(/more than 1\/2".*\.$/),
    })
    expect(readSaw('cutting.endTrim', 'x').ok).toBe(false)
  })

  test('make a request only while kerf and trim can be read', () => {
    expect(cutListRequest({ ...NO_CUT_LIST, text: '9 ft' })).toEqual({
      text: '9 ft',
      stockText: '',
      kerf: inches(1 / 8),
      endTrim: 0,
    })
    expect(cutListRequest({ ...NO_CUT_LIST, kerf: '' })).toBeNull()
    expect(cutListRequest({ ...NO_CUT_LIST, columns: ['length'] })).toMatchObject({ columns: ['length'] })
  })

  test('an answer is fresh until one of them changes, and again when it is changed back', () => {
    const state = { ...NO_CUT_LIST, text: '9 ft', answer: empty }
    const answered = { ...state, answered: inputsOf(state) }
    expect(isFresh(state)).toBe(false)
    expect(isFresh(answered)).toBe(true)
    expect(isFresh({ ...answered, kerf: '0' })).toBe(false)
    expect(isFresh({ ...answered, running: true })).toBe(true)
  })
})

describe('planning', () => {
  test('keeps the last answer until the new one is there', async () => {
    const { made, waiting, list } = session()
    made.editCutList({ text: '9 ft' })
    const first = made.planCutList()
    expect(list()).toMatchObject({ running: true, answer: null })
    waiting[0]?.resolve(empty)
    await first
    expect(list()).toMatchObject({ running: false, answer: empty })
    expect(isFresh(list())).toBe(true)
    made.editCutList({ text: '8 ft' })
    expect(list().answer).toBe(empty)
    expect(isFresh(list())).toBe(false)
  })

  test('an older answer does not take the place of a newer one', async () => {
    const { made, waiting, list } = session()
    const older = made.planCutList()
    const newer = made.planCutList()
    waiting[1]?.resolve(refused)
    await newer
    waiting[0]?.resolve(empty)
    await older
    expect(list().answer).toBe(refused)
  })

  test('a plan stopped by a newer one is no failure; a machine that gives no answer is', async () => {
    const { made, waiting, list } = session()
    const older = made.planCutList()
    const newer = made.planCutList()
    waiting[0]?.reject(new CallError('stopped', 'Stopped: a newer request took its place.'))
    await older
    expect(list()).toMatchObject({ running: true, failure: null })
    waiting[1]?.reject(new CallError('unreachable', 'The program gave no answer.'))
    await newer
    expect(list()).toMatchObject({ running: false, failure: 'The program gave no answer.' })
  })

  test('is not begun while the kerf cannot be read', async () => {
    const { made, waiting } = session()
    made.editCutList({ kerf: 'thin' })
    await made.planCutList()
    expect(waiting).toEqual([])
  })
})
