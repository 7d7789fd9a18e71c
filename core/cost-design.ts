import {
  auditPlan,
  type CutJob,
  type CutPlan,
  type Infeasible,
  type LpEngine,
  planCuts,
  type WorkLimits,
} from './cutting/index.ts'
import type { Design, Planned } from './estimate-types.ts'
import {
  type ClassToCut,
  cutJobs,
  type PriceBook,
  type PriceFault,
  type Pricing,
  priceJob,
} from './pricing/index.ts'
import { type Cents, type Result, sumCents } from './units/index.ts'

export interface EstimateOptions {
  /** limits of work for each product class */
  readonly limits?: Partial<WorkLimits>
  /** asked now and then: true ends the search, and the plans say that they were stopped */
  readonly stop?: () => boolean
  /** sound plans with their bound, without seeking the proof that no order is cheaper */
  readonly quick?: boolean
  /** plans already made, by the content of their cutting job; shared by estimates of one deck in several sizes */
  readonly known?: Map<string, Result<CutPlan, Infeasible>>
}

/** What is bought for a design and what it costs; no totals where a product, a plan or a price is missing. */
export interface Costed {
  readonly classes: readonly ClassToCut[]
  readonly plans: readonly Planned[]
  readonly infeasible: readonly Infeasible[]
  readonly priceFaults: readonly PriceFault[]
  readonly pricing: Pricing | null
  /** boards and joints of all plans */
  readonly lumber: Cents
}

/** Plans every product class, has each plan audited, and prices the whole. Throws where an audit finds a fault: a bug. */
export function costDesign(
  made: Design,
  book: PriceBook,
  engine: LpEngine,
  options: EstimateOptions = {},
): Costed {
  const { classes, faults } = cutJobs(made, book)
  const plans: Planned[] = []
  const infeasible: Infeasible[] = []
  for (const { cutJob, ...named } of classes) {
    const planned = planOnce(cutJob, engine, options)
    if (planned.ok) plans.push({ ...named, plan: planned.value })
    else infeasible.push(planned.error)
  }
  const priced = priceJob(made, plans, book)
  const priceFaults = [...faults, ...(priced.ok ? [] : priced.error)]
  return {
    classes,
    plans,
    infeasible,
    priceFaults,
    pricing: priced.ok && priceFaults.length + infeasible.length === 0 ? priced.value : null,
    lumber: sumCents(plans.map(({ plan }) => plan.cost)),
  }
}

/** A plan of the same pieces, runs and stock is made once; a stopped one is not kept. */
function planOnce(cutJob: CutJob, engine: LpEngine, options: EstimateOptions): Result<CutPlan, Infeasible> {
  const { known, ...rest } = options
  const key = known === undefined ? '' : `${rest.quick ?? false} ${JSON.stringify(cutJob)}`
  const before = known?.get(key)
  if (before !== undefined) return before
  const planned = planCuts(cutJob, engine, rest)
  if (planned.ok) {
    const faults = auditPlan(cutJob, planned.value)
    if (faults.length > 0) throw new Error(`plan of ${cutJob.label}: ${JSON.stringify(faults)}`)
  }
  if (!planned.ok || planned.value.status !== 'stopped') known?.set(key, planned)
  return planned
}
