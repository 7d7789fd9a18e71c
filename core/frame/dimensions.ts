import { type LumberSize, type Section, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import type { ProductClass } from './types.ts'

/** Faces and levels that every member is placed by, in ticks. */
export interface Dimensions {
  readonly width: Ticks
  readonly depth: Ticks
  readonly joist: Section
  /** all plies of one rim together */
  readonly rimThickness: Ticks
  /** y where joists begin: the ledger's face, or the inside of the rear rim */
  readonly joistsFrom: Ticks
  /** y where end joists begin: they lap the ledger's ends, but butt a rear rim */
  readonly endJoistsFrom: Ticks
  /** y where joists and end joists end: the inside of the front rim */
  readonly joistsTo: Ticks
  readonly deckTop: Ticks
  readonly joistTop: Ticks
  readonly joistBottom: Ticks
}

export function dimensionsOf(job: Job): Dimensions {
  const joist = sectionOf(job.frame.joists.size)
  const rimThickness = ticks(joist.thickness * job.frame.rimPlies)
  const freestanding = job.site.attachment === 'freestanding'
  const joistTop = ticks(job.size.height - sectionOf(job.decking.size).thickness)
  return {
    width: job.size.width,
    depth: job.size.depth,
    joist,
    rimThickness,
    joistsFrom: freestanding ? rimThickness : joist.thickness,
    endJoistsFrom: freestanding ? rimThickness : ticks(0),
    joistsTo: ticks(job.size.depth - rimThickness),
    deckTop: job.size.height,
    joistTop,
    joistBottom: ticks(joistTop - joist.depth),
  }
}

/** The job's lumber in a given size. */
export function productOf(job: Job, size: LumberSize): ProductClass {
  const { species, grade, treatment } = job.frame
  return { size, species, grade, treatment }
}
