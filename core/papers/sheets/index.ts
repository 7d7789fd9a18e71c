import type { Sheet, SheetId } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { framingSheet } from './framing-sheet.ts'

/** Every sheet of the set by its name, in the order in which they are printed. */
const MAKERS: { readonly [id in SheetId]?: (source: PaperSource) => Sheet } = {
  framing: framingSheet,
}

export const SHEET_IDS = Object.keys(MAKERS) as readonly SheetId[]

export function makeSheets(source: PaperSource, only: readonly SheetId[] = SHEET_IDS): readonly Sheet[] {
  return SHEET_IDS.filter((id) => only.includes(id)).flatMap((id) => {
    const make = MAKERS[id]
    return make === undefined ? [] : [make(source)]
  })
}
