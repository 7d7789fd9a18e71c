import type { CodeTable } from '../code-table.ts'

/** Least side of a square deck footing. */
export const FOOTING_SQUARES: CodeTable = {
  id: 'irc-2021/footing-squares',
  title: 'Square deck footings',
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
        20: [12, 12, 12, 12],
        40: [14, 12, 12, 12],
        60: [17, 15, 13, 12],
        80: [20, 17, 15, 14],
        100: [22, 19, 17, 15],
        120: [24, 21, 19, 17],
        140: [26, 22, 20, 18],
        160: [28, 24, 21, 20],
      },
    },
  ],
}
