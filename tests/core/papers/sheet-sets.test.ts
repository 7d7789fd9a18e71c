import { describe, expect, test } from 'vitest'
import { SHEET_IDS, SHEET_SETS, type SheetId } from '../../../core/papers/index.ts'

const of = (reader: string): readonly SheetId[] =>
  SHEET_SETS.find((one) => one.reader === reader)?.sheets ?? []

describe('the sheets for one reader', () => {
  test('hold neither costs nor the quote where the permit office, the yard or the crew reads them', () => {
    for (const reader of ['Permit office', 'Yard', 'Crew'])
      for (const kept of ['cost', 'quote', 'change', 'record'] as const)
        expect(of(reader), reader).not.toContain(kept)
  })

  test('never hold the internal costs', () => {
    expect(SHEET_SETS.flatMap(({ sheets }) => sheets)).not.toContain('cost')
  })

  test('have for a permit office what plan reviewers ask for: plan, section, footings, details, guards and the checks', () => {
    // the list of the permit sheet itself: scaled plan, footing schedule, section, ledger, connectors, guards, stairs
    expect(of('Permit office')).toEqual(
      expect.arrayContaining(['framing', 'section', 'footings', 'details', 'stairs', 'checks']),
    )
  })

  test('stand in the order in which they are printed, each once', () => {
    for (const { sheets } of SHEET_SETS) expect(sheets).toEqual(SHEET_IDS.filter((id) => sheets.includes(id)))
  })
})
