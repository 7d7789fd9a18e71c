import type { CodeTable } from '../code-table.ts'

/** Least thickness of a deck footing under a 6x6 post. */
export const FOOTING_THICKNESSES: CodeTable = {
  id: 'irc-2021/footing-thicknesses',
  title: 'Thickness of deck footings',
  unit: 'in',
  blockAxes: [{ name: 'live or ground snow load', unit: 'psf', entries: [40], safeSide: 'up' }],
  rowAxis: {
    name: 'tributary area',
    unit: 'sq ft',
    entries: [20, 40, 60, 80, 100, 120, 140, 160],
    safeSide: 'up',
  },
  columnAxis: { name: 'soil bearing', unit: 'psf', entries: [1500, 2000, 2500, 3000], safeSide: 'down' },
  blocks: [
    {
      at: [40],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.3.1',
        confidence: 'from memory; reproduced',
        note: 'Recomputed as side = sqrt((load + 10) x area / bearing), thickness = max(6, (side - 6) / 2), each rounded to the nearest inch: 0 in apart. Rows under 60 sq ft are those of 2018, which are larger than those of 2021.',
      },
      rows: {
        20: [6, 6, 6, 6],
        40: [6, 6, 6, 6],
        60: [6, 6, 6, 6],
        80: [7, 6, 6, 6],
        100: [8, 6, 6, 6],
        120: [9, 7, 6, 6],
        140: [10, 8, 7, 6],
        160: [11, 9, 8, 7],
      },
    },
  ],
}
