import type { CodeTable } from '../code-table.ts'
import { SPECIES_GROUP_AXIS } from '../species-groups.ts'

/** Deck beam spans, centre to centre of posts, by effective joist span; joists from one side, No.2, wet service, 10 psf dead load. */
export const BEAM_SPANS: CodeTable = {
  id: 'irc-2021/beam-spans',
  title: 'Deck beam spans',
  unit: 'in',
  blockAxes: [
    { name: 'live or ground snow load', unit: 'psf', entries: [40], safeSide: 'up' },
    SPECIES_GROUP_AXIS,
  ],
  rowAxis: {
    name: 'beam',
    unit: '',
    entries: [
      '1-2x6',
      '1-2x8',
      '1-2x10',
      '1-2x12',
      '2-2x6',
      '2-2x8',
      '2-2x10',
      '2-2x12',
      '3-2x6',
      '3-2x8',
      '3-2x10',
      '3-2x12',
    ],
    safeSide: 'exact',
  },
  columnAxis: {
    name: 'effective joist span',
    unit: 'ft',
    entries: [6, 8, 10, 12, 14, 16, 18],
    safeSide: 'up',
  },
  blocks: [
    {
      at: [40, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.5(1)',
        confidence: 'from memory; reproduced',
        note: 'Recomputed by an NDS model fitted to the table: 82 of 84 cells equal, two 1 in shorter in the table. Some 2-2x6 values also read in a copy of the DCA 6-09 addendum.',
      },
      rows: {
        '1-2x6': [55, 48, 43, 39, 36, 34, 32],
        '1-2x8': [71, 61, 55, 50, 46, 43, 41],
        '1-2x10': [84, 72, 65, 59, 55, 51, 48],
        '1-2x12': [99, 85, 76, 70, 65, 60, 57],
        '2-2x6': [83, 71, 64, 58, 54, 51, 48],
        '2-2x8': [105, 91, 81, 74, 69, 64, 60],
        '2-2x10': [124, 108, 96, 88, 81, 76, 72],
        '2-2x12': [146, 127, 113, 103, 96, 90, 84],
        '3-2x6': [98, 89, 80, 73, 68, 63, 60],
        '3-2x8': [130, 114, 102, 93, 86, 80, 76],
        '3-2x10': [156, 135, 120, 110, 102, 95, 90],
        '3-2x12': [183, 159, 142, 129, 120, 112, 106],
      },
    },
  ],
}
