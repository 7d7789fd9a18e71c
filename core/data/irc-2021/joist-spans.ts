import type { CodeTable } from '../code-table.ts'
import { SPECIES_GROUP_AXIS } from '../species-groups.ts'

/** Deck joist spans, clear between supports, No.2, wet service, 10 psf dead load, at most 18 ft. */
export const JOIST_SPANS: CodeTable = {
  id: 'irc-2021/joist-spans',
  title: 'Deck joist spans',
  unit: 'in',
  blockAxes: [
    { name: 'live or ground snow load', unit: 'psf', entries: [40, 50, 60, 70], safeSide: 'up' },
    SPECIES_GROUP_AXIS,
  ],
  rowAxis: { name: 'joist size', unit: '', entries: ['2x6', '2x8', '2x10', '2x12'], safeSide: 'exact' },
  columnAxis: { name: 'joist spacing', unit: 'in', entries: [12, 16, 24], safeSide: 'up' },
  blocks: [
    {
      at: [40, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'verified',
        note: 'All 36 spans read in AWC DCA 6 Table 2 (Everett WA document portal, document 1003584, page 24) and reproduced from the NDS equations, 0 in apart; that the 2021 IRC prints the same is from memory.',
      },
      rows: {
        '2x6': [119, 108, 91],
        '2x8': [157, 142, 116],
        '2x10': [194, 168, 137],
        '2x12': [216, 198, 162],
      },
    },
    {
      at: [40, 'DF_HF_SPF'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'verified',
        note: 'All 36 spans read in AWC DCA 6 Table 2 (Everett WA document portal, document 1003584, page 24) and reproduced from the NDS equations, 0 in apart; that the 2021 IRC prints the same is from memory.',
      },
      rows: {
        '2x6': [114, 100, 82],
        '2x8': [150, 133, 109],
        '2x10': [188, 163, 133],
        '2x12': [216, 189, 154],
      },
    },
    {
      at: [40, 'RW_WC_PP_RP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'verified',
        note: 'All 36 spans read in AWC DCA 6 Table 2 (Everett WA document portal, document 1003584, page 24) and reproduced from the NDS equations, 0 in apart; that the 2021 IRC prints the same is from memory.',
      },
      rows: {
        '2x6': [106, 96, 82],
        '2x8': [140, 127, 104],
        '2x10': [179, 156, 127],
        '2x12': [209, 181, 148],
      },
    },
    {
      at: [50, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [110, 100, 88],
        '2x8': [145, 132, 113],
        '2x10': [185, 165, 135],
        '2x12': [216, 194, 158],
      },
    },
    {
      at: [50, 'DF_HF_SPF'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [106, 96, 80],
        '2x8': [139, 127, 107],
        '2x10': [178, 159, 130],
        '2x12': [213, 185, 151],
      },
    },
    {
      at: [50, 'RW_WC_PP_RP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [99, 90, 78],
        '2x8': [130, 118, 102],
        '2x10': [166, 151, 125],
        '2x12': [202, 177, 145],
      },
    },
    {
      at: [60, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory',
        note: 'Recomputed from the NDS equations: some cells are 1 to 2 in shorter than the equation. Not read in print.',
      },
      rows: {
        '2x6': [103, 94, 82],
        '2x8': [136, 124, 105],
        '2x10': [173, 153, 125],
        '2x12': [207, 180, 147],
      },
    },
    {
      at: [60, 'DF_HF_SPF'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [100, 90, 74],
        '2x8': [131, 119, 99],
        '2x10': [167, 148, 120],
        '2x12': [198, 171, 140],
      },
    },
    {
      at: [60, 'RW_WC_PP_RP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [93, 84, 74],
        '2x8': [122, 111, 95],
        '2x10': [156, 141, 115],
        '2x12': [189, 164, 134],
      },
    },
    {
      at: [70, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory',
        note: 'Recomputed from the NDS equations: some cells are 1 to 2 in shorter than the equation. Not read in print.',
      },
      rows: {
        '2x6': [98, 89, 76],
        '2x8': [129, 117, 98],
        '2x10': [163, 143, 117],
        '2x12': [194, 168, 137],
      },
    },
    {
      at: [70, 'DF_HF_SPF'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [95, 85, 69],
        '2x8': [125, 113, 92],
        '2x10': [159, 138, 113],
        '2x12': [185, 160, 131],
      },
    },
    {
      at: [70, 'RW_WC_PP_RP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Recomputed from the NDS equations: 0 in apart.',
      },
      rows: {
        '2x6': [88, 80, 70],
        '2x8': [116, 106, 88],
        '2x10': [148, 132, 108],
        '2x12': [177, 153, 125],
      },
    },
  ],
}
