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
import { EFFORT, type Effort } from './effort.ts'
import type { PlacedChoice } from './known-failures.ts'
import { type LeastCents, leastLumber, type Shares, sharesOf } from './least-cost.ts'
import { meteredEngine } from './metered-engine.ts'
import { partOf } from './part-of.ts'

/** Work that a plan may take where all that is allowed is done. */
const QUICK = 12_000

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

/** What a plan costs, tax on boards counted. */
interface PlannedCost {
  readonly cost: LeastCents
  /** the same where the plan is proven, or will not be sought further: less where a cheaper order may exist */
  readonly atLeast: LeastCents
  /** null where there is none */
  readonly plan: CutPlan | null
  /** its search ended before its proof */
  readonly open: boolean
}

/**
 * What lumber costs at least, tax on boards counted, product by product: its lengths at their least price, then by the
 * relaxation of its plan, then by the plan itself, whose search ends after some steps. What is known of one cutting job is
 * known of every like one.
 */
export class ClassBounds {
  readonly #book: PriceBook
  readonly #engine: LpEngine
  readonly #plans: Plans
  readonly #stop: Watch['stop']
  readonly #relaxed = new Map<string, LeastCents>()
  readonly #planned = new Map<string, PlannedCost>()
  readonly #effort: Effort
  readonly #byPart = new Map<string, LeastCents>()
  /** each plan is audited once, not for every way that is cut so; its bound where it is chosen */
  readonly sound = new WeakSet<CutPlan>()

  constructor(book: PriceBook, engine: LpEngine, plans: Plans, effort: Effort, stop: Watch['stop']) {
    this.#book = book
    this.#engine = meteredEngine(engine, effort)
    this.#plans = plans
    this.#effort = effort
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

  /** What is known so far. @param settled contents whose plan counts as it is, though a cheaper one may exist */
  of({ content, least }: BoundedClass, settled: ReadonlySet<string>): LeastCents {
    const planned = this.#planned.get(content)
    const known = settled.has(content) ? planned?.cost : planned?.atLeast
    return Math.max(least, known ?? this.#relaxed.get(content) ?? 0)
  }

  /** The plan of a class; null where none was made, or there is none. */
  planOf({ content }: BoundedClass): CutPlan | null {
    return this.#planned.get(content)?.plan ?? null
  }

  /** Whether the search of a plan ended before its proof. */
  isOpen({ content }: BoundedClass): boolean {
    return this.#planned.get(content)?.open === true
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
      this.#effort.add(EFFORT.plan)
      const cost = leastPlanCost(taxed(unknown.cutJob, shares), this.#engine)
      this.#relaxed.set(unknown.content, cost ?? Number.POSITIVE_INFINITY)
      this.#keepPart(unknown, cost ?? Number.POSITIVE_INFINITY)
      return true
    }
    const open = classes.find(({ content }) => !this.#planned.has(content))
    if (open === undefined) return false
    const planned = this.#plan(open, shares)
    this.#planned.set(open.content, planned)
    this.#keepPart(open, planned.atLeast)
    return true
  }

  #plan({ cutJob, content }: BoundedClass, { tax }: Shares): PlannedCost {
    const quick = this.#effort.left === 0
    const within = this.#planWithin(cutJob, quick, quick ? QUICK : this.#effort.ofAPlan)
    // where the work ended before there was a plan, one is made whatever it takes
    const planned = within.ok ? within : this.#planWithin(cutJob, true, Number.POSITIVE_INFINITY)
    if (!planned.ok)
      return { cost: Number.POSITIVE_INFINITY, atLeast: Number.POSITIVE_INFINITY, plan: null, open: false }
    const plan = planned.value
    const cost = plan.stockCost * (1 + tax) + plan.jointCost
    // what the whole search of an estimate ends with counts as it is, proven or not
    const last = plan.status === 'proven optimal' || (plan.status === 'feasible' && !quick)
    return last
      ? { cost, atLeast: cost, plan, open: false }
      : { cost, atLeast: Math.min(cost, this.#relaxed.get(content) ?? 0), plan, open: true }
  }

  /** Stops after so much work. */
  #planWithin(cutJob: CutJob, quick: boolean, work: number): ReturnType<typeof planOnce> {
    const most = this.#effort.spent + work
    this.#effort.add(EFFORT.plan)
    return planOnce(cutJob, this.#engine, {
      known: this.#plans,
      sound: this.sound,
      weighing: true,
      cells: {
        left: () => (most - this.#effort.spent) / EFFORT.cell,
        spend: (cells: number) => this.#effort.add(cells * EFFORT.cell),
      },
      tidy: false,
      quick,
      stop: () => this.#effort.spent > most || this.#stop?.() === true,
    })
  }

  #keepPart(one: BoundedClass, cost: LeastCents): void {
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
