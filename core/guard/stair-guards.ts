import { IRC_LIMITS, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { inches, ticks } from '../units/index.ts'
import { fillBay } from './bays.ts'
import type { StairGuard } from './types.ts'

/**
 * Guards on both sides of every flight from which the landing at the foot lies more than 30 in below. The head of the
 * upper flight ends at the posts of the deck's guard; every other end has a post of its own. IRC 2021 R312.1.1.
 */
export function guardStairs(job: Job, stairs: readonly StairPlan[]): readonly StairGuard[] {
  return stairs.flatMap((plan) => guardPlan(job, plan))
}

function guardPlan(job: Job, stairs: StairPlan): readonly StairGuard[] {
  const post = sectionOf(job.guard.postSize).thickness
  return stairs.flights.flatMap((flight, i) => {
    const drop = flight.topLevel - stairs.landingLevel
    const pattern = stairs.patterns.find((one) => one.flight === flight.number)
    if (pattern === undefined || (job.guard.where !== 'all open edges' && drop <= limit)) return []
    const length = ticks(Math.ceil(flight.risers * pattern.step))
    const spaces = Math.max(1, Math.ceil(length / job.guard.postSpacing))
    // balusters stand upright: what a ball passes is measured level
    const level = (flight.run + pattern.run) / spaces - post
    const bay = fillBay(job, ticks(Math.max(0, Math.floor(level))), true)
    const one: StairGuard = {
      flight: flight.number,
      length,
      posts: i === 0 ? spaces : spaces + 1,
      bays: Array.from({ length: spaces }, () => bay),
    }
    return [one, one]
  })
}

const limit = inches(IRC_LIMITS.guardDrop.value)
