import type { CodeTable } from '../code-table.ts'
import { SPECIES_GROUP_AXIS } from '../species-groups.ts'

/** Deck post heights to the underside of the beam, by tributary area, at most 14 ft. */
export const POST_HEIGHTS: CodeTable = {
  id: 'irc-2021/post-heights',
  title: 'Deck post heights',
  unit: 'in',
  blockAxes: [
    { name: 'live or ground snow load', unit: 'psf', entries: [40], safeSide: 'up' },
    SPECIES_GROUP_AXIS,
  ],
  rowAxis: { name: 'post size', unit: '', entries: ['4x4', '4x6', '6x6', '8x8'], safeSide: 'exact' },
  columnAxis: {
    name: 'tributary area',
    unit: 'sq ft',
    entries: [20, 40, 60, 80, 100, 120, 140, 160],
    safeSide: 'up',
  },
  blocks: [
    {
      at: [40, 'SP'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.4',
        confidence: 'from memory; reproduced',
        note: 'Recomputed by NDS 3.7 (Ke 1.0, wet, rounded down and one inch taken off): 31 of 32 cells equal, one 1 in shorter in the table.',
      },
      rows: {
        '4x4': [168, 164, 132, 113, 100, 89, 81, 74],
        '4x6': [168, 168, 167, 144, 128, 116, 106, 98],
        '6x6': [168, 168, 168, 168, 168, 168, 168, 168],
        '8x8': [168, 168, 168, 168, 168, 168, 168, 168],
      },
    },
  ],
}
