import type { CodeTable } from '../code-table.ts'

/** Fasteners of a deck ledger to a band joist: greatest spacing on centre, by joist span. */
export const LEDGER_SPACING: CodeTable = {
  id: 'irc-2021/ledger-spacing',
  title: 'Deck ledger connection to band joist',
  unit: 'in',
  blockAxes: [{ name: 'live or ground snow load', unit: 'psf', entries: [40, 60], safeSide: 'up' }],
  rowAxis: {
    name: 'fastener',
    unit: '',
    entries: [
      '1/2 in lag screw, sheathing up to 1/2 in',
      '1/2 in bolt, sheathing up to 1/2 in',
      '1/2 in bolt, sheathing up to 1 in',
    ],
    safeSide: 'exact',
  },
  columnAxis: { name: 'joist span', unit: 'ft', entries: [6, 8, 10, 12, 14, 16, 18], safeSide: 'up' },
  blocks: [
    {
      at: [40],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.9.1.3(1)',
        confidence: 'verified',
        note: 'Read in Wisconsin Clearinghouse Rule 15-043, Table 6; 10 ft, lag, 18 in also read as quoted from the 2021 IRC.',
      },
      rows: {
        '1/2 in lag screw, sheathing up to 1/2 in': [30, 23, 18, 15, 13, 11, 10],
        '1/2 in bolt, sheathing up to 1/2 in': [36, 36, 34, 29, 24, 21, 19],
        '1/2 in bolt, sheathing up to 1 in': [36, 36, 29, 24, 21, 18, 16],
      },
    },
    {
      at: [60],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.9.1.3(1)',
        confidence: 'verified',
        note: 'Read as a published table for 60 psf live load (Construction Tip Sheet 05, in a 2022 permit set of Everett WA); that the 2021 IRC prints the same for 60 psf is from memory.',
      },
      rows: {
        '1/2 in lag screw, sheathing up to 1/2 in': [22, 16, 13, 11, 9, 8, 7],
        '1/2 in bolt, sheathing up to 1/2 in': [36, 31, 25, 20, 17, 15, 13],
        '1/2 in bolt, sheathing up to 1 in': [35, 26, 21, 17, 15, 13, 11],
      },
    },
  ],
}
