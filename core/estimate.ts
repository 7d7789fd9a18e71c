import { checkFrame } from './checks/index.ts'
import {
  auditPlan,
  type CutPlan,
  type Infeasible,
  type LpEngine,
  planCuts,
  type WorkLimits,
} from './cutting/index.ts'
import type { Design, EstimateResult, Planned } from './estimate-types.ts'
import { fitOf } from './fit.ts'
import { frameDeck } from './frame/index.ts'
import { type Fault, type FieldPath, type Job, readJob } from './job/index.ts'
import { layOut } from './layout/index.ts'
import { leftOut } from './left-out.ts'
import { nearMisses, type TrySize } from './near-miss.ts'
import {
  type ClassToCut,
  cutJobs,
  type PriceBook,
  type PriceFault,
  type Pricing,
  priceJob,
} from './pricing/index.ts'
import { takeOff } from './takeoff/index.ts'
import { type Cents, fail, ok, type Result, sumCents } from './units/index.ts'

export interface EstimateOptions {
  /** limits of work for each product class */
  readonly limits?: Partial<WorkLimits>
  /** asked now and then: true ends the search, and the plans say that they were stopped */
  readonly stop?: () => boolean
  /** plans already made, by the content of their cutting job; shared by estimates of one deck in several sizes */
  readonly known?: Map<string, Result<CutPlan, Infeasible>>
}

/** From a stated job to its frame, checks and quantities: the part that is quick enough for every keystroke. */
export function design(statement: unknown): Result<Design, readonly Fault[]> {
  const read = readJob(statement)
  return read.ok ? designJob(read.value.job, read.value.given) : read
}

/** The same from a job that is already valid. */
export function designJob(job: Job, given: readonly FieldPath[]): Result<Design, readonly Fault[]> {
  const layout = layOut(job)
  if (!layout.ok) return layout
  const framed = frameDeck(job, layout.value)
  if (!framed.ok) return framed
  const frame = framed.value
  return ok({
    job,
    given,
    layout: layout.value,
    frame,
    checks: checkFrame(job, layout.value, frame),
    takeoff: takeOff(job, frame),
  })
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
  for (const { product, code, cutJob } of classes) {
    const solved = planOnce(cutJob, engine, options)
    if (solved.ok) plans.push({ product, code, plan: solved.value })
    else infeasible.push(solved.error)
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

function planOnce(
  cutJob: ClassToCut['cutJob'],
  engine: LpEngine,
  { known, ...options }: EstimateOptions,
): Result<CutPlan, Infeasible> {
  const key = known === undefined ? '' : JSON.stringify(cutJob)
  const before = known?.get(key)
  if (before !== undefined) return before
  const solved = planCuts(cutJob, engine, options)
  if (solved.ok) {
    const faults = auditPlan(cutJob, solved.value)
    if (faults.length > 0)
      throw new Error(`the plan of ${cutJob.label} breaks a rule: ${JSON.stringify(faults)}`)
  }
  const stopped = solved.ok && solved.value.status === 'stopped'
  if (!stopped) known?.set(key, solved)
  return solved
}

/** The whole estimate of a stated job by a price book; the same inputs give the same bytes. */
export function estimate(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  options: EstimateOptions = {},
): EstimateResult {
  const designed = design(statement)
  if (!designed.ok) return { ok: false, faults: designed.error }
  const shared = { ...options, known: options.known ?? new Map() }
  const made = designed.value
  const costed = costDesign(made, book, engine, shared)
  const { classes, plans, infeasible, priceFaults, pricing, lumber } = costed
  const trySize: TrySize = (key, value) => {
    const smaller = designJob({ ...made.job, size: { ...made.job.size, [key]: value } }, made.given)
    if (!smaller.ok) return null
    const cost = costDesign(smaller.value, book, engine, shared)
    return cost.pricing === null ? null : { lumber: cost.lumber, design: smaller.value }
  }
  return {
    ok: true,
    estimate: {
      ...made,
      plans,
      infeasible,
      priceFaults,
      pricing,
      scope: leftOut(made.job, made.checks, pricing?.lines ?? []),
      nearMisses: pricing === null ? [] : nearMisses(made, classes, lumber, trySize),
      fit: fitOf(made.takeoff.runs, plans, pricing !== null),
    },
  }
}
