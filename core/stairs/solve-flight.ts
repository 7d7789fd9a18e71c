import { IRC_LIMITS } from '../data/index.ts'
import { TICKS_PER_INCH, type Ticks, ticks } from '../units/index.ts'
import type { Spot } from './types.ts'

/** More risers than any slope that the ground fields allow could ask for. */
const MOST_RISERS = 120

export interface Solved {
  readonly risers: number
  /** ticks, exact */
  readonly rise: number
  readonly totalRise: Ticks
  /** ground at the foot to the nearest tick */
  readonly landingLevel: Ticks
}

/**
 * As few risers as keep each at 7-3/4 in or less (IRC 2021 R311.7.5.1), measured to the ground where the foot then
 * stands: on a slope every riser more moves the foot out by a run, and the ground there counts. Null where none does.
 * @param footOf the middle of the foot of a stair with so many risers
 */
export function solveRisers(
  top: Ticks,
  groundAt: (spot: Spot) => number,
  footOf: (risers: number) => Spot,
  fewest: number,
): Solved | null {
  const limit = IRC_LIMITS.riser.value * TICKS_PER_INCH
  for (let risers = fewest; risers <= MOST_RISERS; risers += 1) {
    const landingLevel = ticks(Math.round(groundAt(footOf(risers))))
    const totalRise = ticks(top - landingLevel)
    if (totalRise <= risers * limit) return { risers, rise: totalRise / risers, totalRise, landingLevel }
  }
  return null
}
