import { BAG_YIELD_THOUSANDTHS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { type Cents, cents, priceOf, shareOf } from '../units/index.ts'
import { hoursOf } from './lines/labour-lines.ts'
import { cheapestGood } from './suppliers/cheapest-good.ts'
import { goodOffers } from './suppliers/offers.ts'
import type { GoodPrice, PriceBook } from './types.ts'

/** Cubic feet in a cubic yard. */
const YARD = 27

/** What concrete costs bought one way: material with its sales tax, and the wages that hang on the way. */
interface Way {
  readonly material: Cents
  readonly tax: Cents
  /** paid hours of mixing, or of placing from the truck, in 1/1000 hour */
  readonly hours: number
  readonly labour: Cents
  readonly total: Cents
}

export interface ConcreteWays {
  /** cubic feet with the stated waste */
  readonly cubicFeet: number
  readonly bags: Way & { readonly count: number }
  /** null where the price book has no ready-mix, or no hours for placing it */
  readonly readyMix:
    | (Way & {
        /** as delivered, in 1/1000 cubic yard: the plant's step and least order */
        readonly yards: number
        /** below a full load, in 1/1000 cubic yard */
        readonly missing: number
        readonly shortLoadFee: Cents
      })
    | null
  readonly cheaper: 'bags' | 'ready-mix'
  /** what the job buys */
  readonly bought: 'bags' | 'ready-mix'
}

/** Concrete that is wanted. */
export interface Concrete {
  /** in the forms, without waste, in 1/1000 cubic foot */
  readonly inPlace: number
  /** bags of it, with waste */
  readonly bags: number
}

/**
 * Bags mixed by hand against a truck: bags cost their price and the hours of mixing and placing, a truck its yards, the
 * hours of placing and the fee for what it carries below a full load.
 */
export function concreteWays(job: Job, { inPlace, bags: count }: Concrete, book: PriceBook): ConcreteWays {
  const { concreteWaste, concrete } = job.ground
  const cubicFeet = (inPlace / 1000) * (1 + concreteWaste / 10_000)
  const bag = goodOf(book, 'concrete-bag-80lb')
  const material =
    bag === undefined ? cents(0) : priceOf(count * 1000, cheapestGood(bag, count * 1000, book).price)
  const bags = {
    ...wayOf(job, book, material, 'mix-hand', inPlace),
    count,
  }
  const readyMix = byTruck(job, book, cubicFeet)
  const cheaper = readyMix !== null && readyMix.total < bags.total ? 'ready-mix' : 'bags'
  return { cubicFeet, bags, readyMix, cheaper, bought: concrete === 'cheaper of both' ? cheaper : concrete }
}

/**
 * Yards to order for a volume with its waste, and what is missing of a full load, in 1/1000 cubic yard.
 * @param step smallest amount that is delivered, in 1/1000 cubic yard
 */
export function yardsToOrder(
  { ground }: Job,
  cubicFeet: number,
  step: number,
): { readonly yards: number; readonly missing: number } {
  const least = Math.max((cubicFeet * 1000) / YARD, ground.leastLoad * 1000)
  const yards = Math.ceil(least / step - 1e-9) * step
  return { yards, missing: Math.max(0, ground.fullLoad * 1000 - yards) }
}

/** The task by which a job's ready-mix is placed. */
export function placingRate({ ground }: Pick<Job, 'ground'>): string {
  return ground.placing === 'from the chute' ? 'readymix-chute' : 'readymix-barrow'
}

/**
 * Cents before any rounding that a cubic foot in its form costs at least by the ways that a job leaves open; parts by
 * themselves, so that sums of them bound the whole.
 */
export function leastConcrete(
  { ground }: Job,
  book: PriceBook,
): { readonly material: number; readonly hours: number } {
  const price = (sku: string) => {
    const good = goodOf(book, sku)
    return good === undefined ? 0 : Math.min(...goodOffers(good, book).map((offer) => offer.price)) / 100
  }
  const hours = (id: string) => {
    const rate = book.rates.find((one) => one.id === id)
    return rate === undefined ? 0 : (rate.crewHours / 100_000) * rate.workers
  }
  const waste = 1 + ground.concreteWaste / 10_000
  const bags = {
    material: (waste * 1000 * price('concrete-bag-80lb')) / BAG_YIELD_THOUSANDTHS,
    hours: hours('mix-hand'),
  }
  if (ground.concrete === 'bags') return bags
  const truck = {
    material: (waste * price('concrete-ready-mix')) / YARD,
    hours: hours(placingRate({ ground })) / YARD,
  }
  if (ground.concrete === 'ready-mix') return truck
  return {
    material: Math.min(bags.material, truck.material),
    hours: Math.min(bags.hours, truck.hours),
  }
}

function byTruck(job: Job, book: PriceBook, cubicFeet: number): ConcreteWays['readyMix'] {
  const yard = goodOf(book, 'concrete-ready-mix')
  const fee = goodOf(book, 'ready-mix-short-load')
  if (yard === undefined) return null
  const { yards, missing } = yardsToOrder(job, cubicFeet, yard.pack)
  if (missing > 0 && fee === undefined) return null
  if (!book.rates.some(({ id }) => id === placingRate(job))) return null
  const shortLoadFee =
    fee === undefined ? cents(0) : priceOf(Math.ceil(missing / fee.pack) * fee.pack, fee.price)
  const material = cents(priceOf(yards, yard.price) + shortLoadFee)
  return { ...wayOf(job, book, material, placingRate(job), yards), yards, missing, shortLoadFee }
}

function wayOf(job: Job, book: PriceBook, material: Cents, rateId: string, quantity: number): Way {
  const rate = book.rates.find(({ id }) => id === rateId)
  const hours = rate === undefined ? 0 : hoursOf(quantity, rate)
  const wage = job.builder === 'owner' ? 0 : book.labourRate
  const labour = cents(Math.round((hours * wage) / 1000))
  const tax = shareOf(material, job.pricing.salesTax)
  return { material, tax, hours, labour, total: cents(material + tax + labour) }
}

function goodOf(book: PriceBook, sku: string): GoodPrice | undefined {
  return book.goods.find((good) => good.sku === sku)
}
