import type { Ticks } from '../units/index.ts'
import type { EntryKind, EntryKinds } from './costing-entries.ts'

/** A place where the height of the ground was measured. */
export interface Spot {
  readonly x: Ticks
  readonly y: Ticks
  readonly z: Ticks
}

/** A field's value once read: ticks, cents, 1/100 %, psf or a count as a number. */
export type FieldValue = string | number | boolean | readonly Spot[] | readonly EntryKinds[EntryKind][]
