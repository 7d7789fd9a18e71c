import type { CodeTable } from '../code-table.ts'

/** Thickness of the footings of the AWC deck guide on 1,500 psf, a 6x6 post on them. */
export const DCA_FOOTING_THICKNESSES: CodeTable = {
  id: 'dca-6/footing-thicknesses',
  title: 'Footing thicknesses of the deck guide',
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
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32).',
      },
      rows: {
        6: [7, 8, 10],
        8: [8, 10, 11],
        10: [9, 11, 13],
        12: [10, 13, 15],
        14: [11, 14, 16],
        16: [12, 15, 18],
        18: [13, 16, 19],
      },
    },
  ],
}
