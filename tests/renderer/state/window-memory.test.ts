import { expect, test } from 'vitest'
import { DEMO_JOB, readJob, setField } from '../../../core/job/index.ts'
import { startingFrom } from '../../../renderer/state/job-template.ts'
import { isSpoiltSample } from '../../../renderer/state/sample-job.ts'
import { templateAmong, withCommand } from '../../../renderer/state/window-memory.ts'

test('the command chosen last stands first, once, and only a few are kept', () => {
  const all = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'b'].reduce<readonly string[]>(withCommand, [])
  expect(all).toEqual(['b', 'g', 'f', 'e', 'd', 'c'])
})

test('a template that is no longer on the list is none', () => {
  const job = { id: 'a', name: 'Deck', savedAt: '', revision: 1 }
  const memory = { theme: 'auto', drawing: '', notes: true, recent: [], template: 'a' } as const
  expect(templateAmong([job], memory)).toBe(job)
  expect(templateAmong([], memory)).toBeNull()
  expect(templateAmong([job], { ...memory, template: null })).toBeNull()
})

test('a job that starts from another is priced as that one, and knows nothing of its place, size, frame or name', () => {
  const other = setField(setField(DEMO_JOB, 'work.crew', 3), 'frame.species', 'Douglas Fir')
  const made = startingFrom(other)
  expect(made).toMatchObject({
    name: 'New deck',
    work: { crew: 3 },
    pricing: { margin: '30 %', salesTax: '6 %' },
  })
  expect(made.site).toBeUndefined()
  expect(made.size).toBeUndefined()
  expect(made.notes).toBeUndefined()
  expect(made.scope).toBeUndefined()
  expect(made.frame).toEqual({ species: 'Douglas Fir' })
  expect(readJob(startingFrom(DEMO_JOB)).ok).toBe(true)
})

test('only the sample job with something of it changed can be put back', () => {
  expect(isSpoiltSample(DEMO_JOB)).toBe(false)
  expect(isSpoiltSample(setField(DEMO_JOB, 'size.width', '20 ft'))).toBe(true)
  expect(isSpoiltSample(setField(DEMO_JOB, 'name', 'Barn'))).toBe(false)
})
