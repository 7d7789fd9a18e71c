import type { Sheet, SheetId } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { changeOrderSheet } from './change-order-sheet.ts'
import { checksSheet } from './checks-sheet.ts'
import { contentsSheet } from './contents-sheet.ts'
import { costSheet } from './cost-sheet.ts'
import { cuttingSheet } from './cutting-sheet.ts'
import { deckingSheet } from './decking-sheet.ts'
import { detailsSheet } from './details-sheet.ts'
import { footingsSheet } from './footings-sheet.ts'
import { framingSheet } from './framing-sheet.ts'
import { inspectionsSheet } from './inspections-sheet.ts'
import { markingSheet } from './marking-sheet.ts'
import { orderSheets } from './order-sheet.ts'
import { quoteSheet } from './quote-sheet.ts'
import { recordSheet } from './record-sheet.ts'
import { sectionSheet } from './section-sheet.ts'
import { stairsSheet } from './stairs-sheet.ts'
import { stepsSheet } from './steps-sheet.ts'
import { stripsSheet } from './strips-sheet.ts'

/** What each sheet is called, on the sheet and in lists of them. */
export const SHEET_TITLES: { readonly [id in SheetId]: string } = {
  contents: 'Sheets in this set',
  framing: 'Framing plan',
  footings: 'Footing layout',
  marking: 'Joist marking',
  decking: 'Decking plan',
  cutting: 'Cutting sheet',
  order: 'Order for the yard',
  checks: 'Checks for the plan reviewer',
  section: 'Section and elevations',
  details: 'Details',
  stairs: 'Stairs and guard',
  steps: 'Build steps',
  inspections: 'Inspection cards',
  cost: 'Cost breakdown, internal',
  quote: 'Quote',
  change: 'Change order',
  record: 'Job record',
  strips: 'Marking strips, true size',
}

/** Every sheet of the set by its name but the index of them, in the order in which they are printed. */
const MAKERS: {
  readonly [id in Exclude<SheetId, 'contents'>]: (source: PaperSource) => Sheet | readonly Sheet[] | null
} = {
  framing: framingSheet,
  section: sectionSheet,
  details: detailsSheet,
  footings: footingsSheet,
  marking: markingSheet,
  decking: deckingSheet,
  stairs: stairsSheet,
  cutting: cuttingSheet,
  order: orderSheets,
  checks: checksSheet,
  steps: stepsSheet,
  inspections: inspectionsSheet,
  cost: costSheet,
  quote: quoteSheet,
  change: changeOrderSheet,
  record: recordSheet,
  strips: stripsSheet,
}

const MADE = Object.keys(MAKERS) as readonly (keyof typeof MAKERS)[]

export const SHEET_IDS: readonly SheetId[] = ['contents', ...MADE]

/** The set without what is printed only when it is wanted: strips run to many pages. */
export const USUAL_SHEETS = SHEET_IDS.filter((id) => id !== 'strips')

/** The wanted sheets that the job has something for, under their index where that is wanted. */
export function makeSheets(source: PaperSource, only: readonly SheetId[] = USUAL_SHEETS): readonly Sheet[] {
  const sheets = MADE.filter((id) => only.includes(id)).flatMap((id) => MAKERS[id](source) ?? [])
  return only.includes('contents') && sheets.length > 0 ? [contentsSheet(source, sheets), ...sheets] : sheets
}
