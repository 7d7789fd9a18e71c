import type { Design } from '../estimate-types.ts'
import type { PriceBook } from '../pricing/index.ts'
import { productKey } from '../pricing/index.ts'
import { type Ticks, ticks } from '../units/index.ts'

export interface WidthRange {
  readonly from: Ticks
  readonly to: Ticks
  readonly step: Ticks
  /** also the widths between at which a run along the deck is exactly as long as a stock length */
  readonly exactFits?: boolean
  /** widths already worked, which are passed over */
  readonly except?: readonly Ticks[]
}

/** Widths of a range, nearest to `width` first, the narrower of two equally near ones first. */
export function widthsNearestFirst(
  range: WidthRange,
  width: Ticks,
  exact: readonly Ticks[],
): readonly Ticks[] {
  if (range.step <= 0) throw new RangeError('a range of widths needs a step above 0')
  const widths = new Set<Ticks>(exact.filter((w) => w >= range.from && w <= range.to))
  for (let w: number = range.from; w <= range.to; w += range.step) widths.add(ticks(w))
  for (const known of range.except ?? []) widths.delete(known)
  return [...widths].sort((a, b) => Math.abs(a - width) - Math.abs(b - width) || a - b)
}

/**
 * Widths at which a run along the deck is exactly as long as a stock length of its product, so that an inch more
 * would need a joint or a longer board.
 */
export function exactFitWidths(design: Design, book: PriceBook): readonly Ticks[] {
  const { job, takeoff } = design
  const widths = takeoff.runs
    .filter((run) => run.cause.fields.includes('size.width'))
    .flatMap((run) => {
      const listed = book.lumber.find((entry) => productKey(entry.product) === productKey(run.product))
      const beyond = run.length - job.size.width
      return (listed?.stock ?? []).map((stock) => stock.length - 2 * job.cutting.endTrim - beyond)
    })
  return [...new Set(widths.filter((w) => w > 0))].sort((a, b) => a - b).map(ticks)
}
