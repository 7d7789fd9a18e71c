import { TICKS_PER_FOOT } from '../../units/index.ts'
import type { CutJob, StockOption } from '../types.ts'

/** What the job allows of one stock option: its usable length, how many at most. */
export interface Allowed {
  readonly option: StockOption
  readonly trim: number
  readonly usable: number
  readonly most: number
}

/** The stock that the job's limits leave, by id. */
export function allowedStock(job: CutJob): ReadonlyMap<string, Allowed> {
  const allowed = new Map<string, Allowed>()
  for (const option of job.stock) {
    if (job.onlyStock !== undefined && !job.onlyStock.includes(option.id)) continue
    const trim = option.offcut ? 0 : job.endTrim
    let most = option.supply ?? Number.POSITIVE_INFINITY
    for (const limit of job.atMost ?? [])
      if (limit.stockId === option.id && limit.count < most) most = limit.count
    const usable = option.length - 2 * trim
    if (usable > 0 && most > 0) allowed.set(option.id, { option, trim, usable, most })
  }
  return allowed
}

export function longestUsable(job: CutJob): number {
  let longest = 0
  for (const { usable } of allowedStock(job).values()) if (usable > longest) longest = usable
  return longest
}

/** Price in cents of one board when `count` are bought together. */
export function unitPriceAt(option: StockOption, count: number): number {
  const reached = (option.breaks ?? []).filter((step) => step.from <= count)
  if (reached.length === 0) return option.price
  return reached.reduce((last, step) => (step.from >= last.from ? step : last)).price
}

/** Bought by the pack, from a minimum or with a price break: its price is that of a count, not of a board. */
export function boughtByCount(option: StockOption): boolean {
  return (option.pack ?? 1) > 1 || (option.minimum ?? 1) > 1 || (option.breaks ?? []).length > 0
}

/** What an offcut of this length is worth in cents: never more than its board cost, nothing where boards are bought by count. */
export function offcutWorth(job: CutJob, option: StockOption, length: number): number {
  if (job.keep === null || boughtByCount(option) || length <= 0 || length < job.keep.from) return 0
  return Math.min(Math.floor((length * job.keep.centsPerFoot) / TICKS_PER_FOOT), option.price)
}
