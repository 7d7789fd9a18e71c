import {
  type AuditFault,
  auditCuts,
  auditPlan,
  type CellMeter,
  type CutJob,
  type CutPlan,
  type Infeasible,
  type LpEngine,
  planCuts,
  type Spares,
  sparesFor,
  type Watch,
  type WorkLimits,
  watchPart,
} from './cutting/index.ts'
import type { Design, Planned, SupplierSplit } from './estimate-types.ts'
import {
  type ClassToCut,
  cutJobs,
  type OffcutsOnHand,
  type PriceBook,
  type PriceFault,
  type Pricing,
  priceJob,
} from './pricing/index.ts'
import { type Cents, ok, type Result, sumCents } from './units/index.ts'

export interface EstimateOptions extends Watch {
  /** limits of work for each product class */
  readonly limits?: Partial<WorkLimits>
  /** offcuts kept from other jobs; used at no cost where the job says so */
  readonly rack?: readonly OffcutsOnHand[]
  /** sound plans with their bound, without seeking the proof that no order is cheaper */
  readonly quick?: boolean
  /** false: of plans that cost the same any will do */
  readonly tidy?: boolean
  /** plans that an audit has found sound: they need none again */
  readonly sound?: WeakSet<CutPlan>
  /** true: plans are only weighed, and the bound of the one that is chosen is audited later */
  readonly weighing?: boolean
  /** cells of tables that plans may be made by */
  readonly cells?: CellMeter
  /** plans already made, by the content of their cutting job; shared by estimates of one deck in several sizes */
  readonly known?: Map<string, Result<CutPlan, Infeasible>>
}

/** What is bought for a design and what it costs; no totals where a product, a plan or a price is missing. */
export interface Costed {
  readonly classes: readonly ClassToCut[]
  readonly plans: readonly Planned[]
  readonly infeasible: readonly Infeasible[]
  readonly spares: Spares | null
  readonly priceFaults: readonly PriceFault[]
  readonly pricing: Pricing | null
  /** boards and joints of all plans */
  readonly lumber: Cents
  /** the prices by which it is bought: of a book with several suppliers, those of the suppliers that are chosen */
  readonly book: PriceBook
  /** null where the book has one supplier */
  readonly split: SupplierSplit | null
}

/** For one product of one deck: a person waits for it. What is not proven by then says how far it may be off. */
const WORK_FOR_A_DECK: Partial<WorkLimits> = { nodes: 600, program: 1_000_000 }
/** Where something else than cost comes first each node takes far longer, and more of them seldom find a better plan. */
const WORK_FOR_A_WISH: WorkLimits = { nodes: 20, patterns: 5_000, columns: 4_000 }

/** By the prices of a book as they stand: plans every product class, has each plan audited, and prices the whole. Throws where an audit finds a fault: a bug. */
export function costAt(
  made: Design,
  book: PriceBook,
  engine: LpEngine,
  options: EstimateOptions = {},
): Costed {
  const { classes, faults } = cutJobs(made, book, options.rack)
  const plans: Planned[] = []
  const infeasible: Infeasible[] = []
  for (const [index, { cutJob, ...named }] of classes.entries()) {
    const planned = planOnce(cutJob, engine, options, { part: index + 1, parts: classes.length })
    if (planned.ok) plans.push({ ...named, plan: planned.value })
    else infeasible.push(planned.error)
  }
  const spares = sparesOf(made, classes, plans)
  const priced = priceJob(made, plans, book, spares)
  const priceFaults = [...faults, ...(priced.ok ? [] : priced.error)]
  return {
    classes,
    plans,
    infeasible,
    spares,
    priceFaults,
    pricing: priced.ok && priceFaults.length + infeasible.length === 0 ? priced.value : null,
    lumber: sumCents(plans.map(({ plan }) => plan.cost)),
    book,
    split: null,
  }
}

/** Spare boards for the whole order; offcuts on hand are looked through already and need none. */
function sparesOf({ job }: Design, classes: readonly ClassToCut[], plans: readonly Planned[]): Spares | null {
  if (job.cutting.unusableShare === 0) return null
  const orders = new Map(plans.map(({ plan }) => [plan.jobId, plan.order]))
  return sparesFor(
    classes.map(({ cutJob }) => ({
      classId: cutJob.id,
      lengths: cutJob.stock
        .filter((option) => !option.offcut)
        .map(({ id, length, price, supply, pack }) => {
          const needed = orders.get(cutJob.id)?.find((line) => line.stockId === id)?.count ?? 0
          return {
            stockId: id,
            length,
            needed,
            price,
            step: pack ?? 1,
            most: supply === null ? null : supply - needed,
          }
        }),
    })),
    job.cutting.unusableShare,
    job.cutting.finishProbability,
  )
}

/**
 * The plan of one product class as every estimate makes it. A plan of the same pieces, runs and stock is made once; a
 * stopped one is not kept.
 */
export function planOnce(
  cutJob: CutJob,
  engine: LpEngine,
  options: EstimateOptions = {},
  place: { readonly part: number; readonly parts: number } = { part: 1, parts: 1 },
): Result<CutPlan, Infeasible> {
  const told = options.plans?.get(cutJob.id)
  if (told !== undefined) return audited(cutJob, ok(told), options)
  const planned = planUnlessKnown(cutJob, engine, options, place)
  if (planned.ok) options.onPlan?.(planned.value)
  return planned
}

function planUnlessKnown(
  cutJob: CutJob,
  engine: LpEngine,
  options: EstimateOptions,
  place: { readonly part: number; readonly parts: number },
): Result<CutPlan, Infeasible> {
  const { known, quick = false, tidy = true, limits } = options
  const key = known === undefined ? '' : JSON.stringify([quick, tidy, limits, cutJob])
  const before = known?.get(key)
  if (before !== undefined) return before
  const byCost = cutJob.objectives.every((objective) => objective === 'least cost')
  const planned = planCuts(cutJob, engine, {
    ...watchPart(options, { subject: cutJob.label, ...place, lengthUnit: null }),
    cells: options.cells,
    quick,
    tidy,
    limits: { ...(byCost ? WORK_FOR_A_DECK : WORK_FOR_A_WISH), ...limits },
  })
  // where cells ran out, none found does not say that there is none
  const whole = planned.ok ? planned.value.status !== 'stopped' : options.cells === undefined
  if (options.stop?.() !== true && whole) known?.set(key, planned)
  return audited(cutJob, planned, options)
}

/** A plan that is found sound is added to those that are known to be. */
function audited(
  cutJob: CutJob,
  planned: Result<CutPlan, Infeasible>,
  { sound, weighing = false }: EstimateOptions,
): Result<CutPlan, Infeasible> {
  if (!planned.ok || sound?.has(planned.value)) return planned
  mustBeSound(cutJob, weighing ? auditCuts(cutJob, planned.value) : auditPlan(cutJob, planned.value))
  sound?.add(planned.value)
  return planned
}

/** Throws where an audit found a fault: a bug. */
export function mustBeSound({ label }: CutJob, faults: readonly AuditFault[]): void {
  if (faults.length > 0) throw new Error(`plan of ${label}: ${JSON.stringify(faults)}`)
}
