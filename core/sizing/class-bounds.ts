import { planOnce } from '../cost-design.ts'
import {
  type CutJob,
  type CutPlan,
  type Infeasible,
  type LpEngine,
  leastPlanCost,
  type Watch,
} from '../cutting/index.ts'
import type { Design } from '../estimate-types.ts'
import { cutJobs, type PriceBook, type PriceFault, productKey } from '../pricing/index.ts'
import { cents, type Result } from '../units/index.ts'
import type { PlacedChoice } from './known-failures.ts'
import { type LeastCents, leastLumber, type Shares, sharesOf } from './least-cost.ts'
import { partOf } from './part-of.ts'

export type Plans = Map<string, Result<CutPlan, Infeasible>>

/** Lumber of one product of one design. */
export interface BoundedClass {
  readonly cutJob: CutJob
  readonly content: string
  /** names the parts of a choice that it is made of; null where no others are sure to be cut alike */
  readonly part: string | null
  /** its lengths at their least price, taxed */
  readonly least: LeastCents
}

/**
 * What lumber costs at least, tax on boards counted, product by product: its lengths at their least price, then by the
 * relaxation of its plan, then by the plan itself. What is known of one cutting job is known of every like one.
 */
export class ClassBounds {
  readonly #book: PriceBook
  readonly #engine: LpEngine
  readonly #plans: Plans
  readonly #stop: Watch['stop']
  readonly #relaxed = new Map<string, LeastCents>()
  readonly #planned = new Map<string, LeastCents>()
  readonly #byPart = new Map<string, LeastCents>()

  constructor(book: PriceBook, engine: LpEngine, plans: Plans, stop: Watch['stop']) {
    this.#book = book
    this.#engine = engine
    this.#plans = plans
    this.#stop = stop
  }

  classesOf(
    design: Design,
    placed: PlacedChoice,
  ): { readonly classes: readonly BoundedClass[]; readonly faults: readonly PriceFault[] } {
    const { classes, faults } = cutJobs(design, this.#book)
    const least = leastLumber(design.job, this.#book, design.takeoff)
    const { tax } = sharesOf(design.job)
    return {
      faults,
      classes: classes.map(({ product, cutJob }) => ({
        cutJob,
        content: JSON.stringify(cutJob),
        part: partOf(design.job, placed, product.size),
        least: (least.get(productKey(product)) ?? 0) * (1 + tax),
      })),
    }
  }

  /** What is known so far. */
  of({ content, least }: BoundedClass): LeastCents {
    return Math.max(least, this.#planned.get(content) ?? this.#relaxed.get(content) ?? 0)
  }

  /** By how much the lumber of a choice costs more than its lengths at their least price, as far as like parts are known. */
  beyondLeast(parts: Iterable<string>): LeastCents {
    let sum = 0
    for (const part of parts) sum += this.#byPart.get(part) ?? 0
    return sum
  }

  /** Learns more of one class, the cheapest work first; false where all are planned already. */
  learn(classes: readonly BoundedClass[], shares: Shares): boolean {
    const unknown = classes.find(({ content }) => !this.#relaxed.has(content) && !this.#planned.has(content))
    if (unknown !== undefined) {
      const cost = leastPlanCost(taxed(unknown.cutJob, shares), this.#engine)
      this.#keep(this.#relaxed, unknown, cost ?? Number.POSITIVE_INFINITY)
      return true
    }
    const open = classes.find(({ content }) => !this.#planned.has(content))
    if (open === undefined) return false
    const planned = planOnce(open.cutJob, this.#engine, { known: this.#plans, stop: this.#stop })
    const cost = planned.ok
      ? planned.value.stockCost * (1 + shares.tax) + planned.value.jointCost
      : Number.POSITIVE_INFINITY
    this.#keep(this.#planned, open, cost)
    return true
  }

  #keep(known: Map<string, LeastCents>, one: BoundedClass, cost: LeastCents): void {
    known.set(one.content, cost)
    if (one.part === null) return
    const beyond = Math.max(0, cost - one.least)
    this.#byPart.set(one.part, Math.max(beyond, this.#byPart.get(one.part) ?? 0))
  }
}

/** The job with tax in the prices of its boards; whole cents, rounded down. */
function taxed(cutJob: CutJob, { tax }: Shares): CutJob {
  return {
    ...cutJob,
    stock: cutJob.stock.map((option) => ({ ...option, price: cents(Math.floor(option.price * (1 + tax))) })),
  }
}
