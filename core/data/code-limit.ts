import type { Source } from './types.ts'

/** A single number set by a clause. */
export interface CodeLimit {
  readonly id: string
  readonly says: string
  readonly value: number
  readonly unit: 'in' | 'lb' | 'psf' | 'count' | 'ratio'
  readonly source: Source
}
