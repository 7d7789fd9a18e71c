import type { EstimateOptions } from './cost-design.ts'
import type { LpEngine } from './cutting/index.ts'
import { estimate } from './estimate.ts'
import type { EstimateResult } from './estimate-types.ts'
import type { PriceBook } from './pricing/index.ts'
import { type Cents, cents, sumCents } from './units/index.ts'

/** What a wish costs: the job with it against the same job without it. Below zero where it saves. */
export type WishPrice =
  | {
      readonly ok: true
      /** boards and joints */
      readonly lumber: Cents
      /** the whole cost and the price: taxes, hours and shares follow the lumber */
      readonly cost: Cents
      readonly price: Cents
      /** boards and joints are known to this: 0 where both plans are proven */
      readonly within: Cents
    }
  | { readonly ok: false; readonly message: string }

/** Estimates both and tells the difference, or why the job cannot be had with the wish. */
export function wishPrice(
  without: unknown,
  wished: unknown,
  book: PriceBook,
  engine: LpEngine,
  options: EstimateOptions = {},
): WishPrice {
  const shared = { ...options, known: options.known ?? new Map() }
  const before = priced(estimate(without, book, engine, shared))
  if (!before.ok) return { ok: false, message: `Without the wish: ${before.message}` }
  const after = priced(estimate(wished, book, engine, shared))
  if (!after.ok) return after
  return {
    ok: true,
    lumber: cents(after.lumber - before.lumber),
    cost: cents(after.cost - before.cost),
    price: cents(after.price - before.price),
    within: cents(after.gap + before.gap),
  }
}

function priced(result: EstimateResult) {
  if (!result.ok) {
    const [fault] = result.faults
    return { ok: false as const, message: `${fault?.message ?? 'The job has a fault'}; ${fault?.fix ?? ''}.` }
  }
  const { job, pricing, plans, infeasible, priceFaults } = result.estimate
  if (pricing === null) {
    const [first] = infeasible
    const message =
      first === undefined ? (priceFaults[0]?.message ?? 'It has no price.') : `${first.message} ${first.help}`
    return { ok: false as const, message }
  }
  return {
    ok: true as const,
    lumber: sumCents(plans.map(({ plan }) => plan.cost)),
    // a plan chosen for something else than cost is not meant to be the least: its gap is no doubt about it
    gap: job.cutting.objective === 'least cost' ? sumCents(plans.map(({ plan }) => plan.gap)) : 0,
    cost: pricing.totals.cost,
    price: pricing.totals.price,
  }
}
