import type { CodeTable } from '../code-table.ts'
import { SPECIES_GROUP_AXIS } from '../species-groups.ts'

/** Joist overhangs of the AWC deck guide, 40 psf live, 10 psf dead; also a quarter of the actual span at most. */
export const DCA_JOIST_OVERHANGS: CodeTable = {
  id: 'dca-6/joist-overhangs',
  title: 'Joist overhangs of the deck guide',
  unit: 'in',
  blockAxes: [SPECIES_GROUP_AXIS],
  rowAxis: { name: 'joist size', unit: '', entries: ['2x6', '2x8', '2x10', '2x12'], safeSide: 'exact' },
  columnAxis: { name: 'joist spacing', unit: 'in', entries: [12, 16, 24], safeSide: 'exact' },
  blocks: [
    {
      at: ['SP'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 2',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 24). Recomputed as the lesser of a quarter of the span and 220 lb at the tip less 3 in: 30 of 36 cells equal, 6 are 1 in shorter, one of them by a half inch rounded down.',
      },
      rows: {
        '2x6': [12, 13, 15],
        '2x8': [22, 24, 28],
        '2x10': [37, 41, 34],
        '2x12': [54, 50, 40],
      },
    },
    {
      at: ['DF_HF_SPF'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 2',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 24). Recomputed as the lesser of a quarter of the span and 220 lb at the tip less 3 in: 30 of 36 cells equal, 6 are 1 in shorter, one of them by a half inch rounded down.',
      },
      rows: {
        '2x6': [11, 12, 14],
        '2x8': [20, 22, 26],
        '2x10': [34, 38, 33],
        '2x12': [52, 47, 39],
      },
    },
    {
      at: ['RW_WC_PP_RP'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 2',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 24). Recomputed as the lesser of a quarter of the span and 220 lb at the tip less 3 in: 30 of 36 cells equal, 6 are 1 in shorter, one of them by a half inch rounded down.',
      },
      rows: {
        '2x6': [9, 10, 11],
        '2x8': [17, 19, 21],
        '2x10': [29, 31, 32],
        '2x12': [43, 45, 37],
      },
    },
  ],
}
