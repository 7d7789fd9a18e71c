import { BAG_YIELD_THOUSANDTHS } from '../data/index.ts'
import type { Design } from '../estimate-types.ts'
import type { PriceBook } from '../pricing/index.ts'
import { type Cents, cents } from '../units/index.ts'

/** Cubic feet in a cubic yard. */
const YARD = 27
/** Yards below which a truck comes at a short-load fee: common practice, no source; the yard says its own. */
const FULL_LOAD = 3
/** Trucks are loaded to the quarter yard: common practice, no source. */
const TRUCK_STEP = 0.25

export interface ConcreteOrder {
  /** cubic feet with the stated waste */
  readonly cubicFeet: number
  readonly bags: {
    readonly count: number
    readonly material: Cents
    readonly mixing: Cents
    readonly total: Cents
  }
  /** null where the price book has no ready-mix */
  readonly readyMix: {
    readonly cubicYards: number
    readonly material: Cents
    readonly shortLoadFee: Cents
    readonly total: Cents
  } | null
  readonly cheaper: 'bags' | 'ready-mix'
  /** cubic feet above which ready-mix is the cheaper; null where it never is, or has no price */
  readonly breakEven: number | null
}

/**
 * Bags mixed by hand against a truck: bags cost their price and the crew's hours of mixing, a truck its yards and, for
 * an order below what its yard calls a full load, the short-load fee. Placing costs the same either way and is left out.
 */
export function concreteOrder({ job, takeoff }: Design, book: PriceBook): ConcreteOrder {
  const waste = 1 + job.ground.concreteWaste / 10_000
  const cubicFeet = takeoff.volumes.concrete * waste
  const price = (sku: string) => book.goods.find((good) => good.sku === sku)?.price
  const rate = book.rates.find(({ id }) => id === 'mix-hand')
  const wage = job.builder === 'owner' ? 0 : book.labourRate
  const mixingPerFoot = rate === undefined ? 0 : ((rate.crewHours * rate.workers) / 100_000) * wage
  const perBag = (price('concrete-bag-80lb') ?? 0) / 100
  const material = cents(Math.round(takeoff.volumes.bags * perBag))
  const mixing = cents(Math.round(takeoff.volumes.concrete * mixingPerFoot))
  const bags = { count: takeoff.volumes.bags, material, mixing, total: cents(material + mixing) }
  const perYard = price('concrete-ready-mix')
  if (perYard === undefined) return { cubicFeet, bags, readyMix: null, cheaper: 'bags', breakEven: null }

  const fee = (price('ready-mix-short-load') ?? 0) / 100
  const yards = Math.ceil(cubicFeet / YARD / TRUCK_STEP - 1e-9) * TRUCK_STEP
  const truck = cents(Math.round((yards * perYard) / 100))
  const shortLoadFee = cents(yards < FULL_LOAD ? Math.round(fee) : 0)
  const readyMix = { cubicYards: yards, material: truck, shortLoadFee, total: cents(truck + shortLoadFee) }
  const bagFoot = perBag / (BAG_YIELD_THOUSANDTHS / 1000) + mixingPerFoot / waste
  const truckFoot = perYard / 100 / YARD
  return {
    cubicFeet,
    bags,
    readyMix,
    cheaper: readyMix.total < bags.total ? 'ready-mix' : 'bags',
    breakEven: bagFoot <= truckFoot ? null : Math.min(fee / (bagFoot - truckFoot), FULL_LOAD * YARD),
  }
}
