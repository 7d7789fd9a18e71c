import type { LpEngine } from '../cutting/index.ts'
import { costDesign, design, designJob, type EstimateOptions } from '../estimate.ts'
import type { PriceBook } from '../pricing/index.ts'
import type { Ticks } from '../units/index.ts'
import { rowOf, unpriced } from './row.ts'
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
    const size = { width, depth: job.size.depth }
    return made.ok
      ? rowOf(size, made.value, costDesign(made.value, book, engine, { ...shared, quick }))
      : unpriced(size, made.error[0]?.message ?? 'It cannot be framed.')
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
