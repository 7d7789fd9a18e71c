import type { Footing } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { PriceBook } from '../pricing/index.ts'
import { costOf, sharesOf } from '../sizing/index.ts'
import { digRate } from '../takeoff/index.ts'

export interface Work {
  readonly rateId: string
  /** units of the rate for one of what is counted */
  readonly quantity: number
}

/** Digging a cubic foot of a footing's hole, and filling one. */
export function digging(job: Job, footing: Footing): readonly Work[] {
  return [
    { rateId: digRate(job, footing.holeDiameter), quantity: 1 },
    { rateId: 'backfill-tamp', quantity: 1 },
  ]
}

/** Cents that work costs with its material, in the cost and not the price; rates that the book lacks count nothing. */
export function workCost(
  job: Job,
  book: PriceBook,
  works: readonly Work[],
  count: number,
  material = 0,
): number {
  const wage = job.builder === 'owner' ? 0 : book.labourRate
  const hours = works.reduce((sum, { rateId, quantity }) => {
    const rate = book.rates.find(({ id }) => id === rateId)
    return sum + (rate === undefined ? 0 : (rate.crewHours / 100_000) * rate.workers * quantity)
  }, 0)
  return costOf(sharesOf(job), material, hours * count * wage)
}
