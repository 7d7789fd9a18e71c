import type { CodeTable } from '../code-table.ts'

/** Round footings of the AWC deck guide on 1,500 psf, the weight of the concrete counted. */
export const DCA_FOOTING_ROUNDS: CodeTable = {
  id: 'dca-6/footing-rounds',
  title: 'Round footings of the deck guide',
  unit: 'in',
  blockAxes: [{ name: 'soil bearing', unit: 'psf', entries: [1500], safeSide: 'down' }],
  rowAxis: { name: 'beam span', unit: 'ft', entries: [6, 8, 10, 12, 14, 16, 18], safeSide: 'up' },
  columnAxis: { name: 'joist span', unit: 'ft', entries: [10, 14, 18], safeSide: 'up' },
  blocks: [
    {
      at: [1500],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 4',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32). Recomputed as 37.5 psf x beam span x joist span on 1,500 psf less the weight of the concrete, a 6x6 post on it, rounded up: all 21 cells equal.',
      },
      rows: {
        6: [18, 21, 24],
        8: [20, 24, 27],
        10: [23, 27, 31],
        12: [25, 30, 34],
        14: [27, 32, 37],
        16: [29, 35, 40],
        18: [31, 37, 42],
      },
    },
  ],
}
