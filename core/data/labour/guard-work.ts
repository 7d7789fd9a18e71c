import type { Source } from '../types.ts'

/** How much longer work takes in one place than in another, as a share of the rate for the other. */
export interface WorkFactor {
  readonly id: string
  readonly says: string
  readonly value: number
  readonly source: Source
}

/** Rails and infill along the slope, of the hours for as much on the level. */
export const STAIR_INFILL: WorkFactor = {
  id: 'labour/stair-infill',
  says: 'infill of a guard beside stairs, of the hours for as much on the level',
  value: 1.5,
  source: {
    document: '',
    edition: '',
    clause: '',
    confidence: 'common practice, no source',
    note: 'Trade knowledge of the compiler; no public figure found.',
  },
}
