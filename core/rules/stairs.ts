import { IRC_LIMITS } from '../data/index.ts'
import { TICKS_PER_INCH, type Ticks } from '../units/index.ts'

export interface Flight {
  readonly risers: number
  /** treads of the flight; the deck is the top one and is not counted */
  readonly treads: number
  /** ticks, exact, not whole: the carpenter's rise is this within 3/8 in from the greatest to the least */
  readonly riser: number
  readonly run: Ticks
}

/**
 * Risers of a flight: as few as keep each at 7-3/4 in or less. IRC 2021 R311.7.5.1.
 * A total rise of exactly n times the limit takes n risers: lengths are whole ticks, so that no rounding adds one.
 * @param rise from the lower landing to the deck's surface, more than 0
 * @param tread run of each tread
 */
export function layOutFlight(rise: Ticks, tread: Ticks): Flight {
  const limit = IRC_LIMITS.riser.value * TICKS_PER_INCH
  const risers = Math.ceil(rise / limit)
  return { risers, treads: risers - 1, riser: rise / risers, run: ((risers - 1) * tread) as Ticks }
}

/** Length of the line through the nosings of a whole flight, ticks, not whole: √(rise² + run²). */
export function stringerLine(rise: Ticks, run: Ticks): number {
  return Math.sqrt(rise ** 2 + run ** 2)
}
