import type { CodeTable } from '../code-table.ts'
import { SPECIES_GROUP_AXIS } from '../species-groups.ts'
import type { Source } from '../types.ts'

const UNEXPLAINED: Source = {
  document: 'IRC',
  edition: '2021',
  clause: 'Table R507.6',
  confidence: 'from memory',
  note: 'Shorter than the equation (220 lb at the tip, tip deflection a/180) by 1 to 7 in, cause not found; not read in print.',
}

/** Deck joist cantilevers by the adjacent span, 40 psf only. */
export const JOIST_CANTILEVERS: CodeTable = {
  id: 'irc-2021/joist-cantilevers',
  title: 'Deck joist cantilevers',
  unit: 'in',
  blockAxes: [
    { name: 'live or ground snow load', unit: 'psf', entries: [40], safeSide: 'up' },
    SPECIES_GROUP_AXIS,
  ],
  rowAxis: { name: 'joist size', unit: '', entries: ['2x6', '2x8', '2x10', '2x12'], safeSide: 'exact' },
  columnAxis: {
    name: 'adjacent span',
    unit: 'ft',
    entries: [4, 6, 8, 10, 12, 14, 16, 18],
    safeSide: 'lesser of neighbours',
  },
  blocks: [
    {
      at: [40, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Cells not named as doubtful equal the lesser of a quarter of the adjacent span and 220 lb at the tip with a tip deflection of a/180.',
      },
      rows: {
        '2x6': [12, 18, 17, null, null, null, null, null],
        '2x8': [12, 18, 24, 30, 27, null, null, null],
        '2x10': [12, 18, 24, 30, 36, 40, 40, null],
        '2x12': [12, 18, 24, 30, 36, 42, 48, 49],
      },
      doubts: [
        { row: '2x10', column: 14, source: UNEXPLAINED },
        { row: '2x10', column: 16, source: UNEXPLAINED },
        { row: '2x12', column: 18, source: UNEXPLAINED },
      ],
    },
    {
      at: [40, 'DF_HF_SPF'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Cells not named as doubtful equal the lesser of a quarter of the adjacent span and 220 lb at the tip with a tip deflection of a/180.',
      },
      rows: {
        '2x6': [12, 18, 16, null, null, null, null, null],
        '2x8': [12, 18, 24, 27, 24, null, null, null],
        '2x10': [12, 18, 24, 30, 36, 39, null, null],
        '2x12': [12, 18, 24, 30, 36, 42, 47, 47],
      },
      doubts: [
        { row: '2x10', column: 14, source: UNEXPLAINED },
        { row: '2x12', column: 16, source: UNEXPLAINED },
        { row: '2x12', column: 18, source: UNEXPLAINED },
      ],
    },
    {
      at: [40, 'RW_WC_PP_RP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.6',
        confidence: 'from memory; reproduced',
        note: 'Cells not named as doubtful equal the lesser of a quarter of the adjacent span and 220 lb at the tip with a tip deflection of a/180.',
      },
      rows: {
        '2x6': [12, 16, 13, null, null, null, null, null],
        '2x8': [12, 18, 24, 23, null, null, null, null],
        '2x10': [12, 18, 24, 30, 33, null, null, null],
        '2x12': [12, 18, 24, 30, 36, 42, 44, null],
      },
      doubts: [
        { row: '2x10', column: 12, source: UNEXPLAINED },
        { row: '2x12', column: 16, source: UNEXPLAINED },
      ],
    },
  ],
}
