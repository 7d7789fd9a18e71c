import type { LumberSize, Source } from '../types.ts'

/** Places of ledger fasteners, inches: from the ledger's edges and ends, and from row to row. */
export const LEDGER_EDGES: {
  readonly top: number
  readonly bottom: number
  readonly ends: number
  readonly rows: readonly [number, number]
  /** bottom row to the ledger's top edge, at least */
  readonly bottomRow: { readonly [size in LumberSize]?: number }
  readonly source: Source
} = {
  top: 2,
  bottom: 0.75,
  ends: 2,
  rows: [1.625, 5],
  bottomRow: { '2x8': 5.5, '2x10': 6.5, '2x12': 7.5 },
  source: {
    document: 'IRC',
    edition: '2021',
    clause: 'Table R507.9.1.3(2)',
    confidence: 'verified',
    note: 'Read in a permit sheet (Edmonds WA) that quotes the table; the columns of row spacing were read from a scan.',
  },
}
