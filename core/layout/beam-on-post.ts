import { sectionOf } from '../data/index.ts'
import type { BeamSpec, Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'

export function beamThickness(spec: BeamSpec): Ticks {
  return ticks(sectionOf(spec.size).thickness * spec.plies)
}

/** A post's sides along the beam and across it. */
export interface PostFootprint {
  readonly along: Ticks
  readonly across: Ticks
}

/**
 * How a post stands under its beam: its wide side along the beam, for bearing, turned where only so the beam
 * is not wider than the post. Null where the beam is wider either way.
 */
export function postFootprint(job: Job, spec: BeamSpec): PostFootprint | null {
  const { thickness, depth } = sectionOf(job.frame.postSize)
  const beam = beamThickness(spec)
  if (beam <= thickness) return { along: depth, across: thickness }
  if (beam <= depth) return { along: thickness, across: depth }
  return null
}
