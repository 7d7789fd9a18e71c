import type { Estimate } from '../estimate-types.ts'
import type { Job, KeptLine } from '../job/index.ts'
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
    const none = { hours: 0, stage: '', rate: '', count: 0, of: '', factor: PLAIN }
    const minutes = joints.get(id)
    // joints are priced by the joint: their minutes are hours too
    if (minutes !== undefined)
      return {
        ...kept,
        ...none,
        stage: id.includes('decking') ? 'decking' : 'frame',
        hours: Math.round((thousandths * minutes) / MINUTES),
      }
    const task = part === 'labour' ? tasks.get(cause.ids[0] ?? '') : undefined
    if (task === undefined) return { ...kept, ...none }
    return {
      ...kept,
      hours: thousandths,
      stage: task.stage,
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

/** The estimate that a job keeps from the day it was begun; null where it keeps none. */
export function keptIn({ costing, builder }: Job): Held | null {
  const { estimate: lines, price, hourly } = costing
  return lines.length === 0 ? null : { lines, price, hourly: builder === 'owner' ? cents(0) : hourly }
}

/** The estimate that a job is held against: the one it was begun on, or where it keeps none the present one. */
export function heldAgainst(estimate: Priced, book: PriceBook): Held {
  const kept = keptIn(estimate.job)
  const now = keptEstimate(estimate, book)
  if (kept === null) return now
  const { lines, price, hourly } = kept
  return { lines, price: price === 0 ? now.price : price, hourly: hourly === 0 ? now.hourly : hourly }
}
