import { type FinishedJob, proposedRates, withRate } from '../../core/costing/index.ts'
import { readJob, statedValue } from '../../core/job/index.ts'
import type { Methods } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'
import type { Prices } from './prices.ts'
import { ServiceError } from './service-types.ts'

/** What the hours of finished jobs make of the price book's rates, and the way to take one of them. */
export interface Rates {
  readonly proposed: () => Methods['rates.proposed'][1]
  readonly take: (input: Methods['rates.take'][0]) => Methods['rates.take'][1]
}

const HOURS = 100_000

export function rateService(store: Store, prices: Prices): Rates {
  const proposed = () => proposedRates(finishedJobs(store), prices.book())
  return {
    proposed,
    take: ({ rate, crewHours }) => {
      const found = proposed().find((one) => one.rate === rate)
      if (found === undefined || found.proposed !== crewHours)
        throw new ServiceError(
          'conflict',
          'The hours of the finished jobs have changed since: look at them again.',
        )
      const book = withRate(prices.book(), rate, crewHours, found.jobs.length)
      if (book === null)
        throw new ServiceError(
          'not-found',
          `The price book has no rate "${rate}" now: look at the rates again.`,
        )
      return prices.put(
        book,
        `Rate of “${found.label}”: ${crewHours / HOURS} h, formerly ${found.now / HOURS} h`,
      )
    },
  }
}

/** Jobs on the list that say that they are finished; one that cannot be read teaches nothing. */
function finishedJobs(store: Store): readonly FinishedJob[] {
  return store.jobs.list().flatMap(({ id }) => {
    const statement = store.jobs.read(id)?.statement
    if (statement === undefined || statedValue(statement, 'costing.finished') === undefined) return []
    const read = readJob(statement)
    return read.ok ? [read.value.job] : []
  })
}
