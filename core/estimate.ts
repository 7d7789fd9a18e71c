import { costAt, type EstimateOptions } from './cost-design.ts'
import type { LpEngine, WorkLimits } from './cutting/index.ts'
import { design, designJob } from './design.ts'
import type { EstimateResult } from './estimate-types.ts'
import { fitOf } from './fit.ts'
import { leftOut } from './left-out.ts'
import { nearMisses, type TrySize } from './near-miss.ts'
import { atThisBook, type PriceBook } from './pricing/index.ts'
import { costDesign } from './split-order.ts'
import { stairsShare } from './stairs-share.ts'

export { type Costed, costAt, type EstimateOptions } from './cost-design.ts'
export { design, designJob } from './design.ts'
export { costDesign } from './split-order.ts'

/**
 * Work for each product of a size that is only tried: its plan is an order that can be bought, so what it is said to save
 * is saved. The proof that no order of that size is cheaper took up to nine tenths of an estimate.
 */
const WORK_FOR_A_TRY: Partial<WorkLimits> = { nodes: 20, patterns: 1_600, columns: 4_000, program: 200_000 }

/** The whole estimate of a stated job by a price book; the same inputs give the same bytes. */
export function estimate(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  options: EstimateOptions = {},
): EstimateResult {
  const designed = design(statement)
  if (!designed.ok) return { ok: false, faults: designed.error }
  const made = designed.value
  const shared = { ...options, known: options.known ?? new Map() }
  const costed = costDesign(made, book, engine, shared)
  const { classes, plans, infeasible, spares, priceFaults, pricing, lumber, split } = costed
  // what is told of the tried sizes would be taken for this one's
  const untold = { ...shared, onProgress: undefined, onPlan: undefined, plans: undefined }
  const trySize: TrySize = (key, value) => {
    if (options.stop?.() === true) return null
    const tried = designJob({ ...made.job, size: { ...made.job.size, [key]: value } }, made.given)
    if (!tried.ok) return null
    // at the suppliers of this order, so that what is saved is saved by the size
    const cost = costAt(tried.value, costed.book, engine, { ...untold, limits: WORK_FOR_A_TRY })
    if (cost.pricing === null) return null
    const proven = cost.plans.every(({ plan }) => plan.status === 'proven optimal')
    return { lumber: cost.lumber, proven, design: tried.value }
  }
  return {
    ok: true,
    estimate: {
      ...made,
      takeoff: atThisBook(made.job, made.takeoff, costed.book),
      plans,
      infeasible,
      spares,
      priceFaults,
      pricing,
      split,
      scope: leftOut(made.job, made.checks, pricing?.lines ?? [], stairsShare(made, pricing?.lines ?? [])),
      nearMisses: pricing === null ? [] : nearMisses(made, classes, lumber, trySize),
      fit: fitOf(made.takeoff.runs, plans, pricing !== null),
    },
  }
}
