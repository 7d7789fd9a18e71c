import { type LumberSize, type Section, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import type { ProductClass } from './types.ts'

/** Sections and levels that every member is placed by, in ticks. */
export interface Dimensions {
  readonly joist: Section
  readonly deckTop: Ticks
  readonly joistTop: Ticks
  readonly joistBottom: Ticks
}

export function dimensionsOf(job: Job): Dimensions {
  const joist = sectionOf(job.frame.joists.size)
  const joistTop = ticks(job.size.height - sectionOf(job.decking.size).thickness)
  return { joist, deckTop: job.size.height, joistTop, joistBottom: ticks(joistTop - joist.depth) }
}

/** The job's lumber in a given size. */
export function productOf(job: Job, size: LumberSize): ProductClass {
  const { species, grade, treatment } = job.frame
  return { size, species, grade, treatment }
}
