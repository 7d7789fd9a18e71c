import type { CodeTable } from '../code-table.ts'

/**
 * Beam spans of the AWC deck guide, clear between posts, 40 psf live, 10 psf dead, joists from one side. Its solid 4x
 * beams are left out: no job can ask for them.
 */
export const DCA_BEAM_SPANS: CodeTable = {
  id: 'dca-6/beam-spans',
  title: 'Beam spans of the deck guide',
  unit: 'in',
  blockAxes: [
    {
      name: 'species',
      unit: '',
      entries: ['SP', 'other'],
      safeSide: 'exact',
      labels: { SP: 'Southern Pine', other: 'other species' },
    },
  ],
  rowAxis: {
    name: 'beam',
    unit: '',
    entries: ['2-2x6', '2-2x8', '2-2x10', '2-2x12', '3-2x6', '3-2x8', '3-2x10', '3-2x12'],
    safeSide: 'exact',
  },
  columnAxis: { name: 'joist span', unit: 'ft', entries: [6, 8, 10, 12, 14, 16, 18], safeSide: 'up' },
  blocks: [
    {
      at: ['SP'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 3A',
        confidence: 'from memory',
        note: 'The recalled IRC 2015 and 2018 beam table less 3 in, a rule that was read (letter in the Journal of Light Construction); the cells themselves were not.',
      },
      rows: {
        '2-2x6': [80, 68, 61, 55, 51, 48, 45],
        '2-2x8': [102, 88, 78, 71, 66, 61, 57],
        '2-2x10': [121, 105, 93, 85, 78, 73, 69],
        '2-2x12': [143, 124, 110, 100, 93, 87, 81],
        '3-2x6': [95, 86, 77, 70, 65, 60, 57],
        '3-2x8': [127, 111, 99, 90, 83, 77, 73],
        '3-2x10': [153, 132, 117, 107, 99, 92, 87],
        '3-2x12': [180, 156, 139, 126, 117, 109, 103],
      },
    },
    {
      at: ['other'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 3A',
        confidence: 'from memory',
        note: 'The recalled IRC 2015 and 2018 beam table less 3 in, a rule that was read; the row of 3-2x6 and the start of 3-2x8 were read on a page that quotes the guide, as of another edition.',
      },
      rows: {
        '2-2x6': [62, 53, 47, 43, 39, 34, 30],
        '2-2x8': [79, 68, 61, 55, 51, 46, 41],
        '2-2x10': [97, 84, 75, 68, 63, 58, 53],
        '2-2x12': [113, 98, 87, 79, 73, 68, 64],
        '3-2x6': [85, 77, 69, 63, 58, 54, 51],
        '3-2x8': [113, 99, 88, 80, 74, 69, 65],
        '3-2x10': [141, 122, 109, 99, 91, 85, 80],
        '3-2x12': [164, 142, 126, 115, 106, 99, 94],
      },
    },
  ],
}
