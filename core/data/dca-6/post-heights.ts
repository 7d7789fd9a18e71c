import type { CodeTable } from '../code-table.ts'

/** Heights of 6x6 posts of the AWC deck guide, 40 psf live, 10 psf dead, by beam and joist span. */
export const DCA_POST_HEIGHTS: CodeTable = {
  id: 'dca-6/post-heights',
  title: '6x6 post heights of the deck guide',
  unit: 'in',
  blockAxes: [
    {
      name: 'species',
      unit: '',
      entries: ['SP', 'DFL', 'HF_WC', 'RW', 'PP_RP_SPF'],
      safeSide: 'exact',
      labels: {
        SP: 'Southern Pine',
        DFL: 'Douglas fir-larch',
        HF_WC: 'hem-fir and western cedars',
        RW: 'redwood',
        PP_RP_SPF: 'pines and spruce-pine-fir',
      },
    },
  ],
  rowAxis: { name: 'beam span', unit: 'ft', entries: [6, 8, 10, 12, 14, 16, 18], safeSide: 'up' },
  columnAxis: { name: 'joist span', unit: 'ft', entries: [10, 14, 18], safeSide: 'up' },
  blocks: [
    {
      at: ['SP'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 4',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32); the order of the species columns is from memory. Shorter than a concentric column by NDS 3.7 allows, by up to 9 1/2 ft: never to be replaced by it.',
      },
      rows: {
        6: [168, 168, 168],
        8: [168, 168, 168],
        10: [168, 168, 144],
        12: [168, 156, 132],
        14: [168, 132, 108],
        16: [156, 120, 84],
        18: [144, 108, 60],
      },
    },
    {
      at: ['DFL'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 4',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32); the order of the species columns is from memory. Shorter than a concentric column by NDS 3.7 allows, by up to 9 1/2 ft: never to be replaced by it.',
      },
      rows: {
        6: [168, 168, 168],
        8: [168, 168, 156],
        10: [168, 156, 132],
        12: [168, 144, 108],
        14: [156, 120, 96],
        16: [144, 108, 60],
        18: [132, 96, 24],
      },
    },
    {
      at: ['HF_WC'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 4',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32); the order of the species columns is from memory. Shorter than a concentric column by NDS 3.7 allows, by up to 9 1/2 ft: never to be replaced by it.',
      },
      rows: {
        6: [168, 168, 144],
        8: [168, 168, 132],
        10: [168, 132, 96],
        12: [144, 108, 72],
        14: [132, 84, 24],
        16: [120, 60, 24],
        18: [96, 24, 24],
      },
    },
    {
      at: ['RW'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 4',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32); the order of the species columns is from memory. Shorter than a concentric column by NDS 3.7 allows, by up to 9 1/2 ft: never to be replaced by it.',
      },
      rows: {
        6: [168, 168, 168],
        8: [168, 168, 144],
        10: [168, 156, 132],
        12: [168, 132, 108],
        14: [156, 120, 96],
        16: [144, 108, 84],
        18: [132, 96, 72],
      },
    },
    {
      at: ['PP_RP_SPF'],
      source: {
        document: 'AWC DCA 6',
        edition: '2012 IRC version',
        clause: 'Table 4',
        confidence: 'verified',
        note: 'Read in a scanned copy (Everett WA document portal, document 1003584, page 32); the order of the species columns is from memory. Shorter than a concentric column by NDS 3.7 allows, by up to 9 1/2 ft: never to be replaced by it.',
      },
      rows: {
        6: [168, 168, 132],
        8: [168, 132, 96],
        10: [144, 96, 24],
        12: [120, 60, 24],
        14: [96, 24, null],
        16: [72, 24, null],
        18: [24, null, null],
      },
    },
  ],
}
