import type { SheetId } from '../sheet-types.ts'

/** Sheets that go to one reader together, and nothing that another must not see. */
export const SHEET_SETS: readonly {
  readonly reader: string
  readonly sheets: readonly SheetId[]
}[] = [
  {
    reader: 'Permit office',
    sheets: ['contents', 'framing', 'section', 'details', 'footings', 'decking', 'stairs', 'checks'],
  },
  { reader: 'Yard', sheets: ['order'] },
  {
    reader: 'Crew',
    sheets: [
      'contents',
      'framing',
      'section',
      'details',
      'footings',
      'marking',
      'decking',
      'stairs',
      'cutting',
      'steps',
      'inspections',
    ],
  },
  { reader: 'Customer', sheets: ['quote', 'change'] },
]
