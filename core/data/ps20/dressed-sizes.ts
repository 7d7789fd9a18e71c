import { inches, type Ticks } from '../../units/index.ts'
import type { LumberSize, Source } from '../types.ts'

/** Dressed (dry) thickness and width of the nominal sizes the program frames with, and their nominal inches. */
export const dressedSizes: {
  readonly [size in LumberSize]: {
    readonly thickness: Ticks
    readonly depth: Ticks
    /** nominal inches, for board feet; a 5/4 board is reckoned as 1-1/4 */
    readonly nominalThickness: number
    readonly nominalDepth: number
  }
} = {
  '2x4': { thickness: inches(1.5), depth: inches(3.5), nominalThickness: 2, nominalDepth: 4 },
  '2x6': { thickness: inches(1.5), depth: inches(5.5), nominalThickness: 2, nominalDepth: 6 },
  '2x8': { thickness: inches(1.5), depth: inches(7.25), nominalThickness: 2, nominalDepth: 8 },
  '2x10': { thickness: inches(1.5), depth: inches(9.25), nominalThickness: 2, nominalDepth: 10 },
  '2x12': { thickness: inches(1.5), depth: inches(11.25), nominalThickness: 2, nominalDepth: 12 },
  '4x4': { thickness: inches(3.5), depth: inches(3.5), nominalThickness: 4, nominalDepth: 4 },
  '4x6': { thickness: inches(3.5), depth: inches(5.5), nominalThickness: 4, nominalDepth: 6 },
  '6x6': { thickness: inches(5.5), depth: inches(5.5), nominalThickness: 6, nominalDepth: 6 },
  '8x8': { thickness: inches(7.5), depth: inches(7.5), nominalThickness: 8, nominalDepth: 8 },
  '5/4x6': { thickness: inches(1), depth: inches(5.5), nominalThickness: 1.25, nominalDepth: 6 },
  // a slot for clips along both edges takes nothing off the width that it covers
  '5/4x6 grooved': { thickness: inches(1), depth: inches(5.5), nominalThickness: 1.25, nominalDepth: 6 },
  '1x8': { thickness: inches(0.75), depth: inches(7.25), nominalThickness: 1, nominalDepth: 8 },
  '1x10': { thickness: inches(0.75), depth: inches(9.25), nominalThickness: 1, nominalDepth: 10 },
  '1x12': { thickness: inches(0.75), depth: inches(11.25), nominalThickness: 1, nominalDepth: 12 },
}

/** Where the dressed sizes come from. */
export const dressedSizesSource: Source = {
  document: 'DOC PS 20, American Softwood Lumber Standard',
  edition: '2020',
  clause: 'Tables 3 and 4, minimum dressed sizes, dry',
  confidence: 'verified',
  note:
    'Dry sizes read in public tables of the standard, the print itself not read; edition year from memory. ' +
    'Timbers of 7 in nominal and more may be up to 3/4 in under (an 8x8 7-1/4 in) since PS 20-05; ' +
    'the 7-1/2 in of the NDS section is used: measure an 8x8 before cutting to fit.',
}
