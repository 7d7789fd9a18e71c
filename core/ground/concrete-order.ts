import { BAG_YIELD_THOUSANDTHS } from '../data/index.ts'
import type { Design } from '../estimate-types.ts'
import { type ConcreteWays, concreteWays, type PriceBook } from '../pricing/index.ts'

export interface ConcreteOrder extends ConcreteWays {
  /**
   * Cubic feet with waste from which on a truck is the cheaper, to the next quarter of a cubic yard; null where it is
   * not even at a full load, or has no price
   */
  readonly breakEven: number | null
}

/** Volumes that are tried for the break-even, quarters of a cubic yard: up to a truck and a half. */
const MOST_QUARTERS = 60
const QUARTER = 27 / 4

/** How a deck's concrete is bought, what it costs the other way, and where the two cost the same. */
export function concreteOrder({ job, takeoff }: Design, book: PriceBook): ConcreteOrder {
  const ways = (inPlace: number, bags: number) =>
    concreteWays(job, { inPlace: Math.ceil(inPlace * 1000 - 1e-6), bags }, book)
  const waste = 1 + job.ground.concreteWaste / 10_000
  const at = (quarters: number) => {
    const cubicFeet = quarters * QUARTER
    return ways(cubicFeet / waste, Math.ceil((cubicFeet * 1000) / BAG_YIELD_THOUSANDTHS - 1e-9))
  }
  // beyond the least order the truck gains on the bags with every quarter, so the last one at which bags win decides
  const dearer = Array.from({ length: MOST_QUARTERS }, (_, i) => i + 1).findLast(
    (quarters) => at(quarters).cheaper === 'bags',
  )
  const first = (dearer ?? 0) + 1
  return {
    ...ways(takeoff.volumes.concrete, takeoff.volumes.bags),
    breakEven: first > MOST_QUARTERS ? null : first * QUARTER,
  }
}
