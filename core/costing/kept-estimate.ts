import type { Estimate } from '../estimate-types.ts'
import type { KeptLine } from '../job/index.ts'
import type { Line, PriceBook, Pricing } from '../pricing/index.ts'
import { cents } from '../units/index.ts'
import type { Held } from './types.ts'

type Priced = Pick<Estimate, 'job' | 'takeoff'> & { readonly pricing: Pricing }

/** A factor of one, in 1/10,000. */
const PLAIN = 10_000
const MINUTES = 60

/** An estimate as a job is begun on it: its lines with their hours, its price, and what a worker hour costs. */
export function keptEstimate({ job, takeoff, pricing }: Priced, book: PriceBook): Held {
  const tasks = new Map(takeoff.tasks.map((task) => [task.id, task]))
  const rates = new Set(book.rates.map(({ id }) => id))
  const joints = new Map(
    book.joints.map(({ kind, minutes }) => [`joint-${kind.replace(' ', '-')}-labour`, minutes]),
  )
  const keep = (line: Line): KeptLine => {
    const { id, group, label, part, thousandths, unit, price, cause } = line
    const kept = { line: id, group, what: label, part, thousandths, unit, price }
    const none = { hours: 0, rate: '', count: 0, of: '', factor: PLAIN }
    const minutes = joints.get(id)
    // joints are priced by the joint: their minutes are hours too
    if (minutes !== undefined)
      return { ...kept, ...none, hours: Math.round((thousandths * minutes) / MINUTES) }
    const task = part === 'labour' ? tasks.get(cause.ids[0] ?? '') : undefined
    if (task === undefined) return { ...kept, ...none }
    return {
      ...kept,
      hours: thousandths,
      rate: rates.has(task.rateId) ? task.rateId : '',
      count: task.thousandths,
      of: task.unit,
      factor: task.conditions?.factor ?? PLAIN,
    }
  }
  return {
    lines: pricing.lines.map(keep),
    price: pricing.totals.price,
    hourly: job.builder === 'owner' ? cents(0) : book.labourRate,
  }
}

/** The estimate that a job is held against: the one it was begun on, or where it keeps none the present one. */
export function heldAgainst(estimate: Priced, book: PriceBook): Held {
  const { costing, builder } = estimate.job
  if (costing.estimate.length === 0) return keptEstimate(estimate, book)
  return {
    lines: costing.estimate,
    price: costing.price === 0 ? estimate.pricing.totals.price : costing.price,
    hourly: builder === 'owner' ? cents(0) : costing.hourly === 0 ? book.labourRate : costing.hourly,
  }
}
