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

/** Where a beam's top lies: under the joists, or level with their tops where they hang from it. */
export function beamTop(d: Dimensions, { flush }: { readonly flush: boolean }): Ticks {
  return flush ? d.joistTop : d.joistBottom
}

/** The job's lumber in a given size. */
export function productOf(job: Job, size: LumberSize): ProductClass {
  const { species, grade, treatment } = job.frame
  return { size, species, grade, treatment }
}

/** What the field of the decking is made of: grooved boards where clips hold it. Borders and breakers are solid. */
export function fieldProduct(job: Job): ProductClass {
  const { size, edges } = job.decking
  return productOf(job, edges === 'grooved' ? '5/4x6 grooved' : size)
}
