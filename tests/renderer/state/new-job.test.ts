import { expect, test } from 'vitest'
import { DEMO_JOB, readJob } from '../../../core/job/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { CallError } from '../../../renderer/client/call-error.ts'
import { answered, jobOfAnswers, UNANSWERED } from '../../../renderer/state/new-job.ts'
import { createSession } from '../../../renderer/state/session.ts'
import type { Client } from '../../../shared/contract/index.ts'

test('five questions without an answer make a job that states nothing but its name', () => {
  expect(jobOfAnswers({})).toEqual({ ok: true, value: UNANSWERED })
})

test('what is answered is stated, and nothing else', () => {
  const read = jobOfAnswers({
    'size.width': '18-6',
    'site.attachment': 'freestanding',
    builder: 'owner',
    'site.frostDepth': '48',
  })
  const job = read.ok ? readJob(read.value) : null
  expect(job?.ok && job.value.given.toSorted()).toEqual(
    ['builder', 'name', 'site.attachment', 'site.frostDepth', 'size.width'].toSorted(),
  )
  expect(job?.ok && job.value.job).toMatchObject({
    builder: 'owner',
    size: { width: feet(18.5) },
    site: { attachment: 'freestanding', frostDepth: inches(48) },
  })
})

test('each answer that cannot be taken is told at its own field, all at once', () => {
  const read = jobOfAnswers({ 'size.width': 'wide', 'size.depth': `12'`, 'site.snowLoad': '9000' })
  expect(read.ok).toBe(false)
  expect(Object.keys(read.ok ? {} : read.error)).toEqual(['size.width', 'site.snowLoad'])
})

test('an emptied field is not answered, and keeps the other answers', () => {
  const answers = answered(answered({}, 'size.width', '18'), 'size.depth', '12')
  expect(answered(answers, 'size.width', ' ')).toEqual({ 'size.depth': '12' })
})

test('undo after a new job takes the answers back to the defaults, as one step', async () => {
  const client: Client = {
    async call(method, input) {
      if (method !== 'jobs.create' && method !== 'jobs.last')
        throw new CallError('internal', 'This is not kept here.')
      const statement =
        method === 'jobs.last' ? DEMO_JOB : (input as { statement: typeof DEMO_JOB }).statement
      return {
        id: method,
        name: 'A job',
        savedAt: '2026-11-25T10:42:00Z',
        revision: 1,
        recovered: false,
        statement,
        timeline: { first: 0, states: [statement], labels: [], at: 0 },
      } as never
    },
    on: () => () => undefined,
  }
  const session = createSession(client, () => ({ design: () => undefined, dispose: () => undefined }))
  await session.openLast()
  const answers = jobOfAnswers({ 'size.width': '18 ft', builder: 'owner' })
  await session.startJob(answers.ok ? answers.value : {})
  const present = () => session.store.getState().history.present
  expect(present()).toMatchObject({ builder: 'owner', size: { width: `18'-0"` } })
  session.undo()
  expect(present()).toEqual(UNANSWERED)
  session.redo()
  expect(present()).toMatchObject({ builder: 'owner' })
  session.dispose()
})
