import { expect, test } from 'vitest'
import { DEMO_JOB, type JobStatement, readJobText } from '../../../core/job/index.ts'
import { fail, ok } from '../../../core/units/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client } from '../../../shared/contract/index.ts'

/** A machine that opens the job it is given, and keeps what was created. */
function machine(statement: JobStatement) {
  const created: JobStatement[] = []
  const job = (id: string, each: JobStatement) => ({
    id,
    name: 'A job',
    savedAt: '2026-11-25T10:42:00Z',
    revision: 1,
    recovered: false,
    statement: each,
    timeline: { first: 0, states: [each], labels: [], at: 0 },
  })
  const client: Client = {
    async call(method, input) {
      if (method === 'jobs.last') return job('a', statement) as never
      if (method === 'jobs.create') {
        created.push((input as { statement: JobStatement }).statement)
        return job('b', created[0] ?? {}) as never
      }
      throw new CallError('internal', 'This is not kept here.')
    },
    on: () => () => undefined,
  }
  const session = createSession(client, () => ({ design: () => undefined, dispose: () => undefined }))
  return { session, created, state: () => session.store.getState() }
}

test('a job goes out as a file and comes in again as the same statement, under a name every system takes', async () => {
  const first = machine({ ...DEMO_JOB, name: 'Lot 4/5: "porch"?' })
  await first.session.openLast()
  const file = first.session.jobFile()
  expect(file?.fileName).toBe('Lot 4-5- -porch--.kerfwright')
  expect(readJobText(file?.text ?? '').ok).toBe(true)
  const second = machine(DEMO_JOB)
  await second.session.openLast()
  await second.session.takeJobFile('Lot 4.kerfwright', ok(file?.text ?? ''))
  expect(second.created).toEqual([{ ...DEMO_JOB, name: 'Lot 4/5: "porch"?' }])
  expect(second.state().open?.id).toBe('b')
  first.session.dispose()
  second.session.dispose()
})

test('a job file with faults makes no job, and each fault is told with its line until it is put away', async () => {
  const { session, created, state } = machine(DEMO_JOB)
  await session.openLast()
  await session.takeJobFile('bad.kerfwright', ok('{\n  "size": { "width": "wide" }\n}'))
  expect(created).toEqual([])
  expect(state().open?.id).toBe('a')
  expect(state().refusedFile).toMatchObject({
    name: 'bad.kerfwright',
    faults: [{ path: 'size.width', line: 2 }],
  })
  session.forgetRefusedFile()
  expect(state().refusedFile).toBeNull()
  session.dispose()
})

test('a file that could not be read is told in the sentence that says why', async () => {
  const { session, state } = machine(DEMO_JOB)
  await session.openLast()
  await session.takeJobFile('gone.kerfwright', fail('gone.kerfwright cannot be read: there is no such file.'))
  expect(state().refusedFile?.faults[0]?.message).toBe(
    'gone.kerfwright cannot be read: there is no such file.',
  )
  session.dispose()
})

test('a window that closes waits for what is unsaved, and for nothing else', async () => {
  const { session } = machine(DEMO_JOB)
  await session.openLast()
  await session.allSaved()
  session.dispose()
})
