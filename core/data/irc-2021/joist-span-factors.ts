import type { Source } from '../types.ts'

/**
 * Factor on the joist span with which the beam table is entered, by cantilever C over joist span J; interpolation is
 * allowed. The beam table itself is made for C/J = 1/4.
 */
export const JOIST_SPAN_FACTORS: {
  readonly source: Source
  readonly rows: readonly (readonly [number, number])[]
} = {
  source: {
    document: 'IRC',
    edition: '2021',
    clause: 'Table R507.5(5)',
    confidence: 'from memory',
    note: 'Values not read. Statics, (1 + C/J)^2 / 2 / 0.78125, gives less in every row but C/J = 1/12, where 0.72 lies below its 0.751; the greater of table and statics is used.',
  },
  rows: [
    [0, 0.66],
    [1 / 12, 0.72],
    [1 / 10, 0.8],
    [1 / 8, 0.84],
    [1 / 6, 0.9],
    [1 / 4, 1],
  ],
}
