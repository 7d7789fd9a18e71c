import type { LumberSize, Source } from '../types.ts'

/** Least listed capacity of joist hangers in the AWC deck guide, lb, by joist. */
export const DCA_HANGERS: {
  readonly pounds: { readonly [size in LumberSize]?: number }
  readonly source: Source
} = {
  pounds: { '2x6': 400, '2x8': 500, '2x10': 600, '2x12': 700 },
  source: {
    document: 'AWC DCA 6',
    edition: '2012 IRC version',
    clause: 'Joist hangers',
    confidence: 'from memory',
    note: 'Not read in this version; a page that quotes an earlier one shows 500, 600 and 700 lb for 2x8, 2x10 and 2x12 beside 100 lb more.',
  },
}
