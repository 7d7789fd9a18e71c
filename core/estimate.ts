import { costDesign, type EstimateOptions } from './cost-design.ts'
import type { LpEngine } from './cutting/index.ts'
import { design, designJob } from './design.ts'
import type { EstimateResult } from './estimate-types.ts'
import { fitOf } from './fit.ts'
import { leftOut } from './left-out.ts'
import { nearMisses, type TrySize } from './near-miss.ts'
import { atThisBook, type PriceBook } from './pricing/index.ts'

export { type Costed, costDesign, type EstimateOptions } from './cost-design.ts'
export { design, designJob } from './design.ts'

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
  const { classes, plans, infeasible, spares, priceFaults, pricing, lumber } = costDesign(
    made,
    book,
    engine,
    shared,
  )
  // what is told of the tried sizes would be taken for this one's
  const untold = { ...shared, onProgress: undefined, onPlan: undefined, plans: undefined }
  const trySize: TrySize = (key, value) => {
    if (options.stop?.() === true) return null
    const tried = designJob({ ...made.job, size: { ...made.job.size, [key]: value } }, made.given)
    if (!tried.ok) return null
    const cost = costDesign(tried.value, book, engine, untold)
    return cost.pricing === null ? null : { lumber: cost.lumber, design: tried.value }
  }
  return {
    ok: true,
    estimate: {
      ...made,
      takeoff: atThisBook(made.job, made.takeoff, book),
      plans,
      infeasible,
      spares,
      priceFaults,
      pricing,
      scope: leftOut(made.job, made.checks, pricing?.lines ?? []),
      nearMisses: pricing === null ? [] : nearMisses(made, classes, lumber, trySize),
      fit: fitOf(made.takeoff.runs, plans, pricing !== null),
    },
  }
}
