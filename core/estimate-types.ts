import type { Check } from './checks/index.ts'
import type { CutPlan, Infeasible, Spares } from './cutting/index.ts'
import type { Cause, Frame, ProductClass } from './frame/index.ts'
import type { GuardPlan } from './guard/index.ts'
import type { Fault, FieldPath, Job, ScopeTopic } from './job/index.ts'
import type { Layout } from './layout/index.ts'
import type { BoughtFrom, PriceFault, Pricing, SupplierOrder } from './pricing/index.ts'
import type { StairPlan } from './stairs/index.ts'
import type { Takeoff } from './takeoff/index.ts'
import type { Cents, Ticks } from './units/index.ts'

/** The cheap part of the pipeline, run in the window at every keystroke. */
export interface Design {
  readonly job: Job
  readonly given: readonly FieldPath[]
  readonly layout: Layout
  readonly frame: Frame
  /** in the order of the job's fields */
  readonly stairs: readonly StairPlan[]
  /** null where the job asks for none */
  readonly guard: GuardPlan | null
  readonly checks: readonly Check[]
  readonly takeoff: Takeoff
}

/** A size just above a stock length: what it costs and what would drop it. */
export interface NearMiss {
  readonly subject: string
  readonly length: Ticks
  readonly stock: Ticks
  readonly over: Ticks
  /** what the next board up costs more, per piece and in all */
  readonly costs: Cents
  readonly message: string
  /** a change of size that would drop it; null where none within 2 in does */
  /** `proven`: no order of that size costs less; else it saves at least so much */
  readonly suggestion: {
    readonly field: FieldPath
    readonly value: Ticks
    readonly saves: Cents
    readonly proven: boolean
  } | null
}

export interface ScopeLine {
  readonly topic: ScopeTopic
  readonly state: 'priced' | 'not included'
  readonly amount: Cents
  /** of stairs: their share of lines that stand with the deck's; absent where there is none */
  readonly shared?: Cents
  readonly message: string
}

/** How the deck's width sits on stock: whole boards or joints. */
export interface Fit {
  readonly fitsStock: boolean
  readonly fitsWithDecking: boolean
  readonly message: string
}

export interface Planned {
  readonly product: ProductClass
  /** yard code of the product */
  readonly code: string
  /** what the yard may send instead, and the use the treatment is for */
  readonly substitutes: readonly string[]
  readonly useClass: string
  /** stock ids of offcuts on hand */
  readonly onHand: readonly string[]
  /** the supplier's code of stock whose id is another; absent where there is none */
  readonly codes?: { readonly [stockId: string]: string }
  readonly plan: CutPlan
}

/** From whom the order is bought, each delivery counted, and what it would be from one supplier alone. */
export interface SupplierSplit {
  /** everyone who sells any of what is needed */
  readonly asked: readonly string[]
  readonly from: BoughtFrom
  /** one for each delivery: its lines, their sum before tax, and what bringing it costs */
  readonly orders: readonly (Omit<SupplierOrder, 'lines'> & { readonly lines: number })[]
  /** the whole cost of the job with it */
  readonly cost: Cents
  /** no other split of what is needed costs less: every set of suppliers was planned or is bounded above it */
  readonly proven: boolean
  /** by how much another one could cost less before tax; 0 where it is proven */
  readonly gap: Cents
  /** the whole cost of the job from each supplier alone; null where that one does not sell all of it, or it cannot be cut */
  readonly alone: readonly {
    readonly supplier: string
    readonly cost: Cents | null
    readonly lacks: readonly string[]
    /** why there is no cost, where it sells everything */
    readonly message: string
  }[]
}

export interface Estimate extends Design {
  readonly plans: readonly Planned[]
  readonly infeasible: readonly Infeasible[]
  /** boards ordered beyond the plans; null where no board is taken to be unusable */
  readonly spares: Spares | null
  readonly priceFaults: readonly PriceFault[]
  /** null where a product has no plan or a good has no price: no total is shown then */
  readonly pricing: Pricing | null
  /** null where the price book has one supplier for everything */
  readonly split: SupplierSplit | null
  readonly scope: readonly ScopeLine[]
  readonly nearMisses: readonly NearMiss[]
  readonly fit: Fit
}

/** One step of *why*: a thing, what was said of it, what it came from. */
export interface WhyStep {
  readonly id: string
  readonly text: string
  readonly cause: Cause | null
  readonly because: readonly WhyStep[]
}

export type EstimateResult =
  | { readonly ok: true; readonly estimate: Estimate }
  | { readonly ok: false; readonly faults: readonly Fault[] }
