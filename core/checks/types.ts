import type { Confidence } from '../data/index.ts'
import type { FieldPath } from '../job/index.ts'

export type CheckStatus = 'passes' | 'near' | 'fails' | 'calculated only' | 'outside scope'

/** A value with its unit, ready to print. */
export interface Quantity {
  readonly value: number
  readonly unit: 'ticks' | 'psf' | 'lb' | 'plf' | 'psi' | 'sq ft' | 'in' | 'count' | 'ft-lb'
}

/** One answer to one rule, by table or by calculation. */
export interface Finding {
  readonly method: 'prescriptive' | 'calculated'
  readonly document: string
  readonly edition: string
  readonly clause: string
  readonly demand: Quantity
  readonly capacity: Quantity | null
  /** demand ÷ capacity; null where there is no capacity */
  readonly ratio: number | null
  readonly confidence: Confidence
  /** e.g. "2-2x12 row, effective joist span 12 ft column (taken up from 11.25)" */
  readonly lookup: string
  readonly steps: readonly string[]
}

/** One rule applied to one member or group of like members. */
export interface Check {
  readonly id: string
  /** e.g. "Joist span" */
  readonly title: string
  /** ids of members, posts or footings it speaks of */
  readonly subjects: readonly string[]
  readonly status: CheckStatus
  /** the finding that decides */
  readonly governing: Finding | null
  /** what decides, in one phrase, and whether the other agrees; empty where nothing covers it */
  readonly basis: string
  readonly findings: readonly Finding[]
  /** one line: what is the case */
  readonly message: string
  /** what to do about it, or a caution; empty where nothing is needed */
  readonly remedy: string
  readonly fields: readonly FieldPath[]
  /** false: its table has no page for such a load and such lumber that can be relied on, so that no size has a row */
  readonly paged: boolean
  /** what bought metal must be listed for, where the check says it */
  readonly listings?: readonly Listing[]
}

/** The strength that connectors of one kind must be listed for, lb each: the greatest that a check found. */
export interface Listing {
  readonly of: 'joist hanger' | 'end joist angle' | 'post base or cap'
  readonly pounds: number
}
