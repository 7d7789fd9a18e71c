import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB, FIELDS } from '../../../core/job/index.ts'
import { PLACES } from '../../../renderer/state/session-types.ts'
import { findHelp } from '../../../renderer/views/help/find-help.ts'
import { TOPICS } from '../../../renderer/views/help/help-topics.ts'
import { reportDetails } from '../../../renderer/views/help/report-details.ts'
import { noteOf } from '../../../renderer/views/notes/place-notes.ts'

const find = (question: string) => findHelp(question, TOPICS, FIELDS)

describe('the help', () => {
  test('shows every topic while nothing is asked', () => {
    expect(find(' ')).toEqual({ topics: TOPICS, fields: [] })
  })
  test('finds topics by words of their text, those with the word in their title first', () => {
    const { topics } = find('undo')
    expect(topics[0]?.id).toBe('undo')
    expect(topics.length).toBeGreaterThan(1)
    expect(find('diagonals agree').topics.map(({ id }) => id)).toContain('ground')
  })
  test('finds fields by what they are called and what is said of them', () => {
    expect(find('kerf').fields.map(({ path }) => path)).toContain('cutting.kerf')
  })
  test('says nothing of what it does not know', () => {
    expect(find('submarine')).toEqual({ topics: [], fields: [] })
  })
  test('has a topic and notes for both builders at every work place', () => {
    for (const place of PLACES) {
      expect(
        TOPICS.filter((topic) => topic.place === place),
        place,
      ).toHaveLength(1)
      expect(noteOf(place, 'owner')).not.toEqual(noteOf(place, 'contractor'))
    }
  })
})

describe('the details for a report', () => {
  test('count the deck and name nobody: no name, place, sum or note of the job is in them', () => {
    const made = design(DEMO_JOB)
    if (!made.ok) throw new Error('the demonstration has a fault')
    const text = reportDetails({
      version: '1.2.3',
      door: 'browser',
      browser: 'Some browser',
      screen: '1280 × 800 at 1',
      place: 'frame',
      theme: 'auto',
      design: made.value,
      prices: null,
    })
    expect(text).toContain('Kerfwright 1.2.3, browser')
    expect(text).toContain(`${made.value.frame.members.length} members`)
    expect(text).not.toContain('Heron')
    expect(text).not.toContain('$')
    expect(text).not.toContain('demonstration')
  })
})
