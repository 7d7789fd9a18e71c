import type { Job } from '../job/index.ts'
import { type Good, skus, type Takeoff, type Task, taskRates } from '../takeoff/index.ts'
import { concreteWays, placingRate } from './concrete-ways.ts'
import type { PriceBook } from './types.ts'
import { DAILY_RATES, DAY, hoursLeft } from './working-day.ts'

type Counted = Pick<Takeoff, 'goods' | 'tasks'>

/**
 * The takeoff as it is bought and worked at a price book's prices and rates: concrete by bags or by the truck, tools
 * hired by the day, set-up and clean-up of every day where the job counts them. A takeoff that is so already stays.
 */
export function atThisBook<T extends Counted>(job: Job, takeoff: T, book: PriceBook): T {
  return withDays(job, withHire(job, withConcrete(job, takeoff, book), book), book)
}

function withConcrete<T extends Counted>(job: Job, takeoff: T, book: PriceBook): T {
  const bags = takeoff.goods.find(({ sku }) => sku === 'concrete-bag-80lb')
  const mixing = takeoff.tasks.find(({ rateId }) => rateId === 'mix-hand')
  if (job.ground.concrete === 'bags' || bags === undefined || mixing === undefined) return takeoff
  const { bought, readyMix, cubicFeet } = concreteWays(
    job,
    { inPlace: mixing.thousandths, bags: bags.thousandths / 1000 },
    book,
  )
  if (bought === 'bags') return takeoff
  // without its prices the truck is asked for all the same, so that they are missed by name
  const { yards, missing } = readyMix ?? { yards: Math.ceil((cubicFeet * 1000) / 27), missing: 1000 }
  const fields = [...bags.cause.fields, 'ground.concrete', 'ground.fullLoad', 'ground.leastLoad']
  const rule = `${cubicFeet.toFixed(2)} cu ft with waste ÷ 27, ${job.ground.leastLoad} cu yd at least`
  return {
    ...takeoff,
    goods: takeoff.goods.flatMap((good) =>
      good !== bags
        ? [good]
        : [
            goodOf('concrete-ready-mix', yards, { ...bags.cause, fields, rule }),
            ...(missing === 0
              ? []
              : [
                  goodOf('ready-mix-short-load', missing, {
                    ...bags.cause,
                    fields,
                    rule: `A full load is ${job.ground.fullLoad} cu yd`,
                  }),
                ]),
          ],
    ),
    tasks: takeoff.tasks.map((task) =>
      task === mixing
        ? taskOf(placingRate(job), yards, {
            ...mixing.cause,
            fields: [...mixing.cause.fields, 'ground.concrete', 'ground.placing'],
            rule: 'Ready-mix as delivered',
          })
        : task,
    ),
  }
}

function withHire<T extends Counted>(job: Job, takeoff: T, book: PriceBook): T {
  if (takeoff.goods.some(({ group }) => group === 'hire')) return takeoff
  const boring = takeoff.tasks.find(({ rateId }) => rateId === 'auger-hand' || rateId === 'auger-machine')
  const rate = book.rates.find(({ id }) => id === boring?.rateId)
  const hours =
    boring === undefined || rate === undefined ? 0 : (boring.thousandths / 1000) * (rate.crewHours / 100_000)
  const breaker = breakerOf(job, takeoff, book)
  const hired = [
    ...(boring === undefined
      ? []
      : [
          goodOf(
            boring.rateId === 'auger-hand' ? 'hire-auger-two-person' : 'hire-auger-machine',
            daysOf(hours) * 1000,
            {
              fields: ['ground.digging'],
              ids: [boring.id],
              rule: `${hours.toFixed(1)} hours of boring, ${DAY} a day`,
            },
          ),
        ]),
    ...(breaker === null ? [] : [breaker]),
  ]
  return hired.length === 0 ? takeoff : { ...takeoff, goods: [...takeoff.goods, ...hired] }
}

/** Days of hire for so many hours of work. */
function daysOf(hours: number): number {
  return Math.max(1, Math.ceil(hours / DAY - 1e-9))
}

/** The days that the job states; where it states none, those that breaking its rock takes. */
function breakerOf(job: Job, takeoff: Counted, book: PriceBook): Good | null {
  const { breakerDays } = job.ground
  if (breakerDays > 0)
    return goodOf('hire-breaker', breakerDays * 1000, {
      fields: ['ground.breakerDays'],
      ids: [],
      rule: 'Days stated in the job',
    })
  const breaking = takeoff.tasks.find(({ rateId }) => rateId === 'dig-rock')
  const rate = book.rates.find(({ id }) => id === 'dig-rock')
  if (breaking === undefined || rate === undefined) return null
  const hours = (breaking.thousandths / 1000) * (rate.crewHours / 100_000)
  return goodOf('hire-breaker', daysOf(hours) * 1000, {
    fields: ['site.soil'],
    ids: [breaking.id],
    rule: `${hours.toFixed(1)} hours of breaking rock, ${DAY} a day`,
  })
}

/** Each day gives its hours less those of its own set-up and clean-up. */
function withDays<T extends Counted>(job: Job, takeoff: T, book: PriceBook): T {
  if (!job.pricing.dailySetUp || takeoff.tasks.some(({ rateId }) => rateId === 'day-setup')) return takeoff
  const rates = new Map(book.rates.map((rate) => [rate.id, rate]))
  const hoursOf = (rateId: string, quantity: number) => {
    const rate = rates.get(rateId)
    return rate === undefined ? 0 : (quantity * rate.crewHours * rate.workers) / 100_000 / book.crewSize
  }
  const worked = takeoff.tasks.reduce(
    (sum, { rateId, thousandths }) => sum + hoursOf(rateId, thousandths / 1000),
    0,
  )
  const left = hoursLeft(book)
  const days = Math.ceil(worked / left - 1e-9)
  const cause = {
    fields: ['pricing.dailySetUp'],
    ids: [],
    rule: `${worked.toFixed(1)} hours of the crew, ${left.toFixed(2)} left of each day of ${DAY}`,
  }
  return {
    ...takeoff,
    tasks: [...takeoff.tasks, ...DAILY_RATES.map((rateId) => taskOf(rateId, days * 1000, cause))],
  }
}

function goodOf(sku: string, thousandths: number, cause: Good['cause']): Good {
  const listed = skus.find((one) => one.sku === sku)
  if (listed === undefined) throw new Error(`the sku ${sku} is not in the list`)
  const { label, group, unit } = listed
  return { id: `good-${sku}`, sku, label, group, thousandths, unit, cause }
}

function taskOf(rateId: string, thousandths: number, cause: Task['cause']): Task {
  const listed = taskRates.find((one) => one.rateId === rateId)
  if (listed === undefined) throw new Error(`the rate ${rateId} is not in the list`)
  const { label, stage, unit } = listed
  return { id: `task-${rateId}`, rateId, label, stage, thousandths, unit, cause }
}
