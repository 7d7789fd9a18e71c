import type { LpEngine } from '../cutting/index.ts'
import { type Costed, costDesign, design, designJob, type EstimateOptions } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import { countJoints, fitOf } from '../fit.ts'
import type { PriceBook, Pricing } from '../pricing/index.ts'
import { cents, sumCents, type Ticks } from '../units/index.ts'
import { wasteOf } from '../waste.ts'
import { costParts } from './cost-parts.ts'
import type { CompareRow } from './types.ts'
import { exactFitWidths, type WidthRange, widthsNearestFirst } from './widths.ts'

export interface CompareOptions extends EstimateOptions {
  /** every width first with sound plans and their bound, then those that are not proven once more, with the proof */
  readonly quickFirst?: boolean
}

/**
 * The same deck at each width of a range, each planned, audited and priced in full, nearest to its own width first.
 * A width that cannot be framed or priced is a row that says why. Nothing for a job that is not valid itself.
 */
export function* compareWidths(
  statement: unknown,
  book: PriceBook,
  engine: LpEngine,
  range: WidthRange,
  { quickFirst = false, ...options }: CompareOptions = {},
): Iterable<CompareRow> {
  const base = design(statement)
  if (!base.ok) return
  const { job, given } = base.value
  const shared = { ...options, known: options.known ?? new Map() }
  const rowAt = (width: Ticks, quick: boolean): CompareRow => {
    const made = designJob({ ...job, size: { ...job.size, width } }, given)
    return made.ok
      ? rowOf(width, made.value, costDesign(made.value, book, engine, { ...shared, quick }))
      : unpriced(width, made.error[0]?.message ?? 'It cannot be framed.')
  }

  const exact = range.exactFits === true ? exactFitWidths(base.value, book) : []
  const unproven: Ticks[] = []
  for (const width of widthsNearestFirst(range, job.size.width, exact)) {
    const row = rowAt(width, quickFirst)
    yield row
    if (quickFirst && row.fault === null && !row.proven) unproven.push(width)
  }
  for (const width of unproven) yield rowAt(width, false)
}

function rowOf(width: Ticks, made: Design, costed: Costed): CompareRow {
  const failing = made.checks.filter((check) => check.status === 'fails').length
  const { pricing, plans, spares } = costed
  if (pricing === null) {
    const why = costed.infeasible[0]?.message ?? costed.priceFaults[0]?.message ?? 'It has no price.'
    return { ...unpriced(width, why), failing }
  }
  return pricedRow(width, made, { plans, spares }, pricing, failing)
}

function pricedRow(
  width: Ticks,
  made: Design,
  { plans, spares }: Pick<Costed, 'plans' | 'spares'>,
  { totals, ...pricing }: Pricing,
  failing: number,
): CompareRow {
  const joints = countJoints(made.takeoff.runs, plans)
  const fit = fitOf(made.takeoff.runs, plans, true)
  return {
    width,
    cost: totals.cost,
    price: totals.price,
    perSquareFoot: totals.perSquareFoot,
    lumber: sumCents(plans.map(({ plan }) => plan.cost)),
    joints: joints.framing + joints.decking,
    framingJoints: joints.framing,
    boards: plans.reduce((sum, { plan }) => sum + plan.boards.length, 0),
    waste: wasteOf({ plans, spares }).share,
    fitsStock: fit.fitsStock,
    fitsWithDecking: fit.fitsWithDecking,
    proven: plans.every(({ plan }) => plan.status === 'proven optimal'),
    bound: sumCents(plans.map(({ plan }) => plan.bound)),
    failing,
    parts: costParts({ totals, ...pricing }),
    changes: [],
    fault: null,
  }
}

function unpriced(width: Ticks, fault: string): CompareRow {
  const none = cents(0)
  return {
    width,
    cost: none,
    price: none,
    perSquareFoot: none,
    lumber: none,
    joints: 0,
    framingJoints: 0,
    boards: 0,
    waste: 0,
    fitsStock: false,
    fitsWithDecking: false,
    proven: false,
    bound: none,
    failing: 0,
    parts: [],
    changes: [],
    fault,
  }
}
