import { IRC_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { onFlight } from './place-flights.ts'
import type { Pad, PlacedFlight, StairFooting, StringerPattern } from './types.ts'

/** Stringers stand this far on a pad, behind the face of the lowest riser: common practice, no source. */
const UNDER_STRINGERS = inches(12)

/** Least depth of a footing under undisturbed ground, IRC 2021 R403.1.4. */
const LEAST_DEPTH = inches(IRC_LIMITS.footingDepth.value)

/** The pad at the foot of the last flight, as wide as it; null where the stairs end on something else. */
export function padAt(job: Job, flight: PlacedFlight, riserBoard: Ticks): Pad | null {
  const { foot, padDepth, padThickness } = job.stairs
  if (foot !== 'pad') return null
  const toRiser = flight.run + riserBoard
  // a flight of one tread is shorter than that: its pad begins where the flight does, not under the deck
  const under = Math.min(UNDER_STRINGERS, toRiser)
  return {
    corner: onFlight(flight, toRiser - under, 0),
    width: flight.width,
    depth: padDepth,
    thickness: padThickness,
    landing: ticks(padDepth - under),
  }
}

/** One tube under the foot of each stringer, level with the ground, its bottom at the frost depth. */
export function footingsAt(
  job: Job,
  flight: PlacedFlight,
  pattern: StringerPattern,
  name: string,
): readonly StairFooting[] {
  if (job.stairs.foot !== 'footings') return []
  const { tube, holeRoom } = job.ground
  const depth = ticks(Math.max(job.site.frostDepth, LEAST_DEPTH))
  return Array.from({ length: pattern.count }, (_, i): StairFooting => {
    const spot = onFlight(flight, flight.run - tube / 2, i * pattern.spacing + inches(0.75))
    return {
      id: `${name}-${i + 1}`,
      ...spot,
      tube,
      tubeLength: depth,
      base: ticks(0),
      baseThickness: ticks(0),
      depth,
      holeDiameter: ticks(tube + holeRoom),
      cause: {
        fields: ['stairs.foot', 'site.frostDepth', 'ground.tube', 'ground.holeRoom'],
        ids: [`stringer-${flight.number}-${i + 1}`],
        rule: 'A tube under the foot of each stringer, level with the ground, to the frost depth, 12 in at least (IRC 2021 R403.1.4)',
      },
    }
  })
}
