import { describe, expect, test } from 'vitest'
import { readJob } from '../../../core/job/index.ts'
import {
  draftOf,
  entriesOf,
  readDraft,
  withEntries,
  withLineState,
} from '../../../renderer/state/costing-entries.ts'

const LINES = [
  { line: 'good-hanger', what: 'Joist hanger for a 2x10' },
  { line: 'labour-task-joist', what: 'Set joists' },
]

describe('what is typed for a purchase', () => {
  test('is a line of the estimate where its words are that line’s', () => {
    const read = readDraft(
      'bought',
      {
        date: '2026-04-02',
        what: ' Joist hanger for a 2x10 ',
        quantity: '17',
        amount: '$41.15',
        supplier: '',
      },
      LINES,
    )
    expect(read).toMatchObject({
      ok: true,
      value: { line: 'good-hanger', what: '', thousandths: 17_000, amount: 4115 },
    })
  })

  test('is what it says where no line has these words, and may come back with a minus', () => {
    const read = readDraft('bought', { what: '=Tarp', amount: '-19.99', quantity: '-1' }, LINES)
    expect(read).toMatchObject({
      ok: true,
      value: { line: '', what: '=Tarp', thousandths: -1000, amount: -1999 },
    })
  })

  test.each([
    [{ what: '', amount: '5' }, 'what', /does not say what was bought/],
    [{ what: 'Tarp', amount: '' }, 'amount', /^What was paid is missing: write a sum such as \$62\.40/],
    [{ what: 'Tarp', amount: 'ten' }, 'amount', /^"ten": /],
    [{ what: 'Tarp', amount: '1', quantity: 'few' }, 'quantity', /^"few": this is not a number/],
    [{ what: 'Tarp', amount: '1', date: '2026-02-30' }, 'date', /is no day: write it as/],
    [{ what: 'x'.repeat(201), amount: '1' }, 'what', /^This has 201 characters: use at most 200\./],
  ])('%j is told at its field', (draft, part, sentence) => {
    const read = readDraft('bought', draft as { [part: string]: string }, LINES)
    expect(read).toEqual({ ok: false, error: { part, sentence: expect.stringMatching(sentence) } })
  })

  test('stands in the fields again as it was typed, to be changed', () => {
    const draft = { date: '2026-04-02', what: 'Set joists', hours: '6.5', who: 'Ada' }
    const read = readDraft('worked', draft, LINES)
    if (!read.ok) throw new Error(read.error.sentence)
    expect(draftOf(read.value, LINES)).toEqual(draft)
  })
})

describe('the list of entries in a statement', () => {
  test('is kept as the job reads it, and goes with its last entry', () => {
    const read = readDraft('worked', { what: 'Set joists', hours: '6.5' }, LINES)
    if (!read.ok) throw new Error(read.error.sentence)
    const statement = withEntries({ name: 'A' }, 'worked', [read.value])
    expect(readJob(statement)).toMatchObject({
      ok: true,
      value: { job: { costing: { worked: [{ thousandths: 6500 }] } } },
    })
    expect(entriesOf(statement, 'worked')).toEqual([read.value])
    expect(withEntries(statement, 'worked', [])).toEqual({ name: 'A' })
  })

  test('is none where it cannot be read, so that nothing is written over it', () => {
    expect(entriesOf({ costing: { worked: 'six hours' } }, 'worked')).toBeNull()
  })
})

test('what is said of a line is kept only while it says something', () => {
  const some = withLineState([], 'a', { unusable: 2 })
  expect(some).toEqual([{ line: 'a', unusable: 2, left: 0, done: false }])
  const done = withLineState(some, 'a', { done: true })
  expect(withLineState(withLineState(done, 'a', { done: false }), 'a', { unusable: 0 })).toEqual([])
})
