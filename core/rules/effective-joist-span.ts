import { JOIST_SPAN_FACTORS } from '../data/index.ts'

/** Reaction of a quarter-span cantilever on the beam as a share of load times joist span: (1 + 1/4)^2 / 2. */
const TABLE_BASIS = 0.78125

/**
 * Factor on the joist span with which the beam table is entered: the greater of IRC 2021 Table R507.5(5), interpolated
 * as its note allows, and of statics, ((1 + c)^2 / 2) / 0.78125. Beyond c = 1/4, where the table ends, statics alone.
 * @param share c: cantilever beyond the beam over the joist span
 */
export function joistSpanFactor(share: number): number {
  const statics = (1 + share) ** 2 / 2 / TABLE_BASIS
  const { rows } = JOIST_SPAN_FACTORS
  for (const [i, [end, factor]] of rows.entries()) {
    if (share > end) continue
    const [start, before] = rows[i - 1] ?? [end, factor]
    const tabled = end === start ? factor : before + ((factor - before) * (share - start)) / (end - start)
    return Math.max(tabled, statics)
  }
  return statics
}

/** Joist span with which the beam table is entered, in the unit of `span`. */
export function effectiveJoistSpan(span: number, cantilever: number): number {
  return span * joistSpanFactor(cantilever / span)
}
