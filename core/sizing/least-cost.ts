import { BAG_YIELD_THOUSANDTHS } from '../data/index.ts'
import type { Frame, ProductClass } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import {
  goodOffers,
  leastConcrete,
  leaveOut,
  type PriceBook,
  productKey,
  stockOffers,
} from '../pricing/index.ts'
import { type Additions, type Takeoff, takeOff } from '../takeoff/index.ts'
import { toFeet } from '../units/index.ts'

/** A factor of one on hours, in 1/10,000. */
const PLAIN = 10_000

/** Roundings of lines and totals that a bound must not count on, cents. */
export const ROUNDINGS = 200

/** Money in cents before any rounding; what a cost is at least. */
export type LeastCents = number

/** Shares that turn direct cost into cost, as a job states them. */
export interface Shares {
  readonly tax: number
  /** contingency and overhead together, as a factor on direct cost */
  readonly beyond: number
}

export function sharesOf({ pricing, builder }: Job): Shares {
  const overhead = builder === 'owner' ? 0 : pricing.overhead / 10_000
  return { tax: pricing.salesTax / 10_000, beyond: (1 + pricing.contingency / 10_000) * (1 + overhead) }
}

/** Cost of material, labour and other lines, unrounded. */
export function costOf(shares: Shares, material: number, labour: number, other = 0): LeastCents {
  return (material * (1 + shares.tax) + labour + other) * shares.beyond
}

/**
 * Least cents per tick that a product can be bought at, the kerf of each piece counted with it: whatever is cut from a
 * board of length L, its pieces and their kerfs are no longer than L and one kerf. Infinite where none is sold.
 */
export function leastPerTick(job: Job, book: PriceBook, product: ProductClass): number {
  const listed = book.lumber.find((entry) => productKey(entry.product) === productKey(product))
  const { kerf, endTrim } = job.cutting
  return Math.min(
    Number.POSITIVE_INFINITY,
    ...(listed?.stock ?? []).flatMap((entry) =>
      stockOffers(entry, book).flatMap(({ price, breaks = [] }) =>
        [price, ...breaks.map((step) => step.price)].map(
          (least) => least / Math.max(1, entry.length + kerf - 2 * endTrim),
        ),
      ),
    ),
  )
}

/** What lumber of a takeoff costs at least, by product, in cents before tax: every length at its least price. */
export function leastLumber(job: Job, book: PriceBook, takeoff: Takeoff): ReadonlyMap<string, number> {
  const sums = new Map<string, number>()
  const prices = new Map<string, number>()
  const add = (product: ProductClass, length: number) => {
    const key = productKey(product)
    const price = prices.get(key) ?? leastPerTick(job, book, product)
    prices.set(key, price)
    sums.set(key, (sums.get(key) ?? 0) + length * price)
  }
  for (const { product, length } of takeoff.pieces) add(product, length + job.cutting.kerf)
  for (const { product, length, memberIds } of takeoff.runs)
    add(product, memberIds.length * (length + job.cutting.kerf))
  return sums
}

/**
 * What a part of a frame costs at least: nothing is rounded up to packs, tubes and concrete count by what stands in
 * the ground, lumber by its least price. So the sums of parts are the sum of the whole, and the whole costs no less.
 */
export function leastCost(job: Job, book: PriceBook, frame: Frame, additions?: Additions): LeastCents {
  const takeoff = takeOff(job, frame, additions)
  const kept = leaveOut(job, takeoff)
  const prices = new Map(
    book.goods.map((good) => [good.sku, Math.min(...goodOffers(good, book).map(({ price }) => price)) / 100]),
  )
  let material = 0
  for (const { sku, thousandths, group } of kept.goods) {
    // fees come by the whole trip, and are no material
    if (group === 'fees' || group === 'hire' || sku.startsWith('form-tube-') || sku.startsWith('concrete-'))
      continue
    material += (thousandths / 1000) * (prices.get(sku) ?? 0)
  }
  for (const { tube, tubeLength } of frame.footings) {
    material += toFeet(tubeLength) * (prices.get(`form-tube-${tube / 32}in`) ?? 0)
  }
  const bags =
    (takeoff.volumes.concrete * (1 + job.ground.concreteWaste / 10_000) * 1000) / BAG_YIELD_THOUSANDTHS
  const byTruck = job.ground.concrete !== 'bags'
  const concrete = leastConcrete(job, book)
  material += byTruck
    ? takeoff.volumes.concrete * concrete.material
    : bags * (prices.get('concrete-bag-80lb') ?? 0)
  for (const amount of leastLumber(job, book, takeoff).values()) material += amount
  const wage = job.builder === 'owner' ? 0 : book.labourRate
  const rates = new Map(book.rates.map((rate) => [rate.id, (rate.crewHours / 100_000) * rate.workers]))
  const hours = kept.tasks
    .filter(({ rateId }) => !(byTruck && rateId === 'mix-hand'))
    .reduce(
      (sum, { thousandths, rateId, conditions }) =>
        sum + (thousandths / 1000) * (rates.get(rateId) ?? 0) * ((conditions?.factor ?? PLAIN) / PLAIN),
      byTruck ? takeoff.volumes.concrete * concrete.hours : 0,
    )
  return costOf(sharesOf(job), material, hours * wage)
}
