import type { Ticks } from '../units/index.ts'
import type { lumberGrades, lumberSpecies, lumberTreatments } from './lumber-classes.ts'
import type { lumberSizes } from './ps20/lumber-sizes.ts'

/** A nominal size of lumber. */
export type LumberSize = (typeof lumberSizes)[number]

export type Species = (typeof lumberSpecies)[number]

/** Species groups of the IRC's deck tables. */
export type SpeciesGroup = 'SP' | 'DF_HF_SPF' | 'RW_WC_PP_RP'

export type Grade = (typeof lumberGrades)[number]

export type Treatment = (typeof lumberTreatments)[number]

export type SoilClass = 'unknown' | 'clay or silt' | 'sand' | 'sandy gravel or gravel' | 'rock'

/** How far a published figure was verified. Only the first two make a table row that can pass a member. */
export type Confidence =
  | 'verified'
  | 'from memory; reproduced'
  | 'from memory'
  | 'computed only'
  | 'common practice, no source'

/** Where a table or a figure comes from; printed beside what it decides. */
export interface Source {
  /** e.g. "IRC" */
  readonly document: string
  /** e.g. "2021" */
  readonly edition: string
  /** e.g. "Table R507.6" */
  readonly clause: string
  readonly confidence: Confidence
  /** what was read where, or what was recomputed and how far it agreed */
  readonly note: string
}

/** Dressed cross-section of a nominal size (PS 20, dry). */
export interface Section {
  readonly size: LumberSize
  readonly thickness: Ticks
  readonly depth: Ticks
}
