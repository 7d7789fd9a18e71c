import { type Costed, costAt, type EstimateOptions } from './cost-design.ts'
import type { LpEngine } from './cutting/index.ts'
import type { Design, SupplierSplit } from './estimate-types.ts'
import { statedLines } from './job/index.ts'
import {
  type BoughtFrom,
  bookAsBought,
  hasSeveralSuppliers,
  isDeliveryLine,
  type PriceBook,
  supplierOrders,
} from './pricing/index.ts'
import { waysToFreeDelivery } from './reach-free-delivery.ts'
import { neededThings, type Sellers } from './sellers.ts'
import { type Cents, cents, sumCents } from './units/index.ts'

/** Sets of suppliers that are planned for one order; more than five whose delivery costs something go beyond it. */
const MOST_SETS = 40

/** Suppliers of whom every set is looked at: 2^5 sets at most. */
const MOST_CHOICE = 5

/** Money in 1/10,000 cent before sales tax: fees carry none, so that they weigh less than what is taxed. */
type Weighed = number

interface Tried {
  readonly from: BoughtFrom
  readonly costed: Costed
  readonly value: Weighed
  /** no order from all of these suppliers comes to less */
  readonly least: Weighed
  /** no order from some of these suppliers comes to less, deliveries not counted */
  readonly leastGoods: Weighed
}

/**
 * What is bought for a design and what it costs, each thing at the supplier at whom the whole is cheapest: for each set of
 * suppliers the boards are planned at the least prices in it, so that what is cut follows from who sells, and each
 * delivery is paid once. A set is left out only where the bound of a greater one, with its own fees, proves it dearer.
 * A book without offers is planned as it is.
 */
export function costDesign(
  made: Design,
  book: PriceBook,
  engine: LpEngine,
  options: EstimateOptions = {},
): Costed {
  if (!hasSeveralSuppliers(book)) return costAt(made, book, engine, options)
  const { plans: _plans, onPlan: _onPlan, ...watch } = options
  // a plan that is told of belongs to one set of suppliers, and another would take it for its own
  const shared = { ...watch, known: options.known ?? new Map() }
  const sellers = neededThings(made, book)
  const at = (from: BoughtFrom): Costed => costAt(made, bookAsBought(book, from), engine, shared)
  const sets = setsOf(book, sellers)
  const tried: Tried[] = []
  let best: Tried | null = null
  let complete = sets.complete
  for (const suppliers of sets.sets) {
    if (best !== null && (options.stop?.() === true || tried.length >= MOST_SETS)) {
      complete = false
      break
    }
    if (best !== null && !mayBeCheaper(suppliers, tried, best, book, made)) continue
    const whole = { suppliers, only: [] }
    const first = tryOf(whole, at(whole), book, made)
    tried.push(first)
    // what all suppliers together cannot bring, fewer cannot
    if (best === null && first.costed.pricing === null) return first.costed
    if (first.costed.pricing !== null && (best === null || first.value < best.value)) best = first
    for (const from of waysToFreeDelivery(first.costed, suppliers, book)) {
      const other = tryOf(from, at(from), book, made)
      if (other.costed.pricing !== null && (best === null || other.value < best.value)) best = other
    }
  }
  if (best === null) throw new Error('an order has a supplier')
  const gap = Math.max(0, best.value - Math.min(...tried.map(({ least }) => least)))
  return {
    ...best.costed,
    split: splitOf(best, {
      book,
      sellers,
      proven: complete && gap === 0 && isCounted(made),
      gap: cents(Math.ceil(gap / TEN_THOUSAND)),
      alone: options.quick === true || options.stop?.() === true ? [] : aloneOf(best, sellers, at),
    }),
  }
}

const TEN_THOUSAND = 10_000

/** A quantity or price stated by hand does not follow the suppliers, so that bounds say nothing of it. */
function isCounted({ job }: Design): boolean {
  return statedLines(job.pricing.lines).length === 0
}

/** Every set of suppliers who sell what is needed, the greatest first; those that must be in it or cost nothing to use always are. */
function setsOf(
  book: PriceBook,
  { names, only }: Sellers,
): { readonly sets: readonly (readonly string[])[]; readonly complete: boolean } {
  const always = names.filter((name) => only.has(name) || feeOf(book, name) === 0)
  const choice = names.filter((name) => !always.includes(name))
  const complete = choice.length <= MOST_CHOICE
  const subsets = complete
    ? Array.from({ length: 2 ** choice.length }, (_, bits) => choice.filter((_name, at) => bits & (1 << at)))
    : [
        choice,
        ...choice.map((left) => choice.filter((name) => name !== left)),
        ...choice.map((name) => [name]),
        [],
      ]
  return {
    sets: subsets
      .toSorted((a, b) => b.length - a.length)
      .map((some) => [...always, ...some])
      .filter(({ length }) => length > 0),
    complete,
  }
}

function feeOf(book: PriceBook, supplier: string): number {
  return book.suppliers.find(({ name }) => name === supplier)?.delivery ?? 0
}

function tryOf(from: BoughtFrom, costed: Costed, book: PriceBook, made: Design): Tried {
  const { pricing, plans, spares } = costed
  const none = Number.POSITIVE_INFINITY
  if (pricing === null) return { from, costed, value: none, least: none, leastGoods: none }
  const taxed = TEN_THOUSAND + made.job.pricing.salesTax
  const { direct, tax } = pricing.totals
  const fees = sumCents(pricing.lines.filter(isDeliveryLine).map(({ amount }) => amount))
  const preference = sumCents(plans.map(({ plan }) => plan.preference))
  const goods = (direct - tax - fees + preference) * taxed
  const gaps = sumCents(plans.map(({ plan }) => plan.gap)) * taxed
  const value = goods + fees * TEN_THOUSAND
  // fees that a greater order would save: what is paid for deliveries that can be free
  const mayBeFree = supplierOrders(pricing.lines, book)
    .filter(({ freeFrom }) => freeFrom !== null)
    .reduce((sum, { delivery }) => sum + delivery, 0)
  const spare = spares === null ? 0 : sumCents(pricing.lines.filter(isSpare).map(({ amount }) => amount))
  return {
    from,
    costed,
    value,
    least: value - gaps - mayBeFree * TEN_THOUSAND,
    leastGoods: isCounted(made) ? goods - gaps - spare * taxed : Number.NEGATIVE_INFINITY,
  }
}

const isSpare = ({ group }: { readonly group: string }) => group === 'spares'

/** False where the bound of a greater set, with the fees that this one pays at least, is no less than the best. */
function mayBeCheaper(
  suppliers: readonly string[],
  tried: readonly Tried[],
  best: Tried,
  book: PriceBook,
  { job }: Design,
): boolean {
  // the way in which concrete is bought follows the prices, and hours and days follow the way
  const open = job.ground.concrete === 'cheaper of both'
  const fees = book.suppliers
    .filter(({ name, freeFrom }) => suppliers.includes(name) && freeFrom === null)
    .reduce((sum, { delivery }) => sum + (delivery ?? 0), 0)
  return !tried.some(
    (greater) =>
      suppliers.every((name) => greater.from.suppliers.includes(name)) &&
      (greater.costed.pricing === null || (!open && greater.leastGoods + fees * TEN_THOUSAND >= best.value)),
  )
}

/** What everything from one supplier costs, or what that supplier does not sell. */
function aloneOf(
  best: Tried,
  { names, lackedBy }: Sellers,
  at: (from: BoughtFrom) => Costed,
): SupplierSplit['alone'] {
  return names.map((supplier) => {
    const lacks = lackedBy(supplier)
    if (lacks.length > 0) return { supplier, cost: null, lacks, message: '' }
    const { pricing, infeasible } = best.from.suppliers.every((name) => name === supplier)
      ? best.costed
      : at({ suppliers: [supplier], only: [] })
    return {
      supplier,
      cost: pricing?.totals.cost ?? null,
      lacks,
      message: pricing === null ? (infeasible[0]?.message ?? 'It has no price.') : '',
    }
  })
}

function splitOf(
  { from, costed }: Tried,
  {
    book,
    sellers,
    proven,
    gap,
    alone,
  }: {
    readonly book: PriceBook
    readonly sellers: Sellers
    readonly proven: boolean
    readonly gap: Cents
    readonly alone: SupplierSplit['alone']
  },
): SupplierSplit | null {
  const { pricing } = costed
  if (pricing === null) return null
  const orders = supplierOrders(pricing.lines, book).map(({ lines, ...order }) => ({
    ...order,
    lines: lines.length,
  }))
  return {
    asked: sellers.names,
    from,
    orders,
    cost: pricing.totals.cost,
    proven,
    gap,
    alone,
  }
}
