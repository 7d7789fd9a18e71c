import type { CodeTable } from '../code-table.ts'

/** Least diameter of a round deck footing. */
export const FOOTING_ROUNDS: CodeTable = {
  id: 'irc-2021/footing-rounds',
  title: 'Round deck footings',
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
        20: [14, 14, 14, 14],
        40: [16, 14, 14, 14],
        60: [19, 17, 15, 14],
        80: [22, 19, 17, 16],
        100: [25, 21, 19, 17],
        120: [27, 23, 21, 19],
        140: [29, 25, 23, 21],
        160: [31, 27, 24, 22],
      },
    },
  ],
}
