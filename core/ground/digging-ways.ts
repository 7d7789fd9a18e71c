import type { Design } from '../estimate-types.ts'
import { fieldAt, type Job } from '../job/index.ts'
import { atThisBook, hoursOf, type PriceBook } from '../pricing/index.ts'
import { takeOff } from '../takeoff/index.ts'
import { type Cents, cents, priceOf, sumCents } from '../units/index.ts'

/** What digging every hole takes one way, in one soil. */
export interface DiggingWay {
  readonly soil: Job['site']['soil']
  readonly how: Job['ground']['digging']
  /** paid hours, in 1/1000 hour */
  readonly workerHours: number
  readonly hire: Cents
  /** wages and hire, before tax and overhead */
  readonly cost: Cents
  /** as the job states it */
  readonly stated: boolean
}

const WAYS: readonly Job['ground']['digging'][] = ['by hand', 'two-person auger', 'machine auger']

/**
 * Hours of digging by soil, by hand and with hired augers, at a price book's rates. Rates of an auger do not know the
 * soil; no auger bores rock, which is broken out with a hired breaker.
 */
export function diggingWays({ job, frame }: Design, book: PriceBook): readonly DiggingWay[] {
  const wage = job.builder === 'owner' ? 0 : book.labourRate
  const soils = (fieldAt('site.soil').choices ?? []) as readonly Job['site']['soil'][]
  return soils.flatMap((soil) =>
    WAYS.map((how): DiggingWay => {
      const other: Job = {
        ...job,
        site: { ...job.site, soil },
        ground: { ...job.ground, digging: how, breakerDays: 0, found: '' },
      }
      const { goods, tasks } = atThisBook(other, takeOff(other, frame), book)
      const workerHours = tasks
        .filter(({ rateId }) => rateId.startsWith('dig-') || rateId.startsWith('auger-'))
        .reduce((sum, { rateId, thousandths }) => {
          const rate = book.rates.find(({ id }) => id === rateId)
          return sum + (rate === undefined ? 0 : hoursOf(thousandths, rate))
        }, 0)
      const hire = sumCents(
        goods
          .filter(({ group }) => group === 'hire')
          .map(({ sku, thousandths }) => {
            const good = book.goods.find((one) => one.sku === sku)
            return good === undefined ? cents(0) : priceOf(thousandths, good.price)
          }),
      )
      return {
        soil,
        how,
        workerHours,
        hire,
        cost: cents(Math.round((workerHours * wage) / 1000) + hire),
        stated: soil === job.site.soil && how === job.ground.digging,
      }
    }),
  )
}
