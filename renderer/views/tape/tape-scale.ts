import type { CompareRow } from '../../../core/compare/index.ts'
import { type Ticks, ticks } from '../../../core/units/index.ts'

/** Along the tape: width in ticks to pixels and back. */
export interface TapeScale {
  readonly from: Ticks
  readonly to: Ticks
  readonly left: number
  readonly right: number
}

export function xOf(scale: TapeScale, width: number): number {
  return scale.left + ((width - scale.from) / (scale.to - scale.from)) * (scale.right - scale.left)
}

/** The width under a pixel, on the grid of `step` and on the tape. */
export function widthAt(scale: TapeScale, x: number, step: number): Ticks {
  const exact = scale.from + ((x - scale.left) / (scale.right - scale.left)) * (scale.to - scale.from)
  const snapped = Math.round(exact / step) * step
  return ticks(Math.min(scale.to, Math.max(scale.from, snapped)))
}

/** Up the curve: cents per square foot to pixels, with whole-dollar marks. */
export interface MoneyScale {
  readonly low: number
  readonly high: number
  readonly marks: readonly number[]
}

/** The room of the curve over the tape, px. */
export const CURVE = { top: 30, bottom: 88 } as const

/** Cents per square foot to a pixel. */
export function yOf(money: MoneyScale, amount: number): number {
  return CURVE.bottom - ((amount - money.low) / (money.high - money.low)) * (CURVE.bottom - CURVE.top)
}

const NICE = [100, 200, 500, 1000, 2000, 5000, 10_000]

/** A range that holds every value, and at most four round marks within it; money in cents. */
export function moneyScale(values: readonly number[]): MoneyScale | null {
  if (values.length === 0) return null
  const least = Math.min(...values)
  const most = Math.max(...values)
  const room = Math.max(100, most - least)
  const step = NICE.find((each) => room / each <= 3) ?? Math.ceil(room / 3)
  const low = Math.floor(least / step) * step
  const high = Math.max(low + step, Math.ceil(most / step) * step)
  const marks: number[] = []
  for (let mark = low; mark <= high; mark += step) marks.push(mark)
  return { low, high, marks }
}

/** Stretches of widths with or without joints; a row speaks for half a step to either side. */
export function stretches(
  rows: readonly CompareRow[],
  step: number,
  from: Ticks,
  to: Ticks,
): readonly { readonly from: number; readonly to: number; readonly whole: boolean }[] {
  const found: { from: number; to: number; whole: boolean }[] = []
  for (const row of rows) {
    if (row.fault !== null) continue
    const start = Math.max(from, row.width - step / 2)
    const end = Math.min(to, row.width + step / 2)
    const last = found.at(-1)
    if (last && last.whole === row.fitsStock && last.to === start) last.to = end
    else if (end > start) found.push({ from: start, to: end, whole: row.fitsStock })
  }
  return found
}

/** Runs of neighbouring rows that could be priced: the curve breaks where one is missing. */
export function curveParts(rows: readonly CompareRow[], step: number): readonly (readonly CompareRow[])[] {
  const parts: CompareRow[][] = []
  let last: CompareRow | null = null
  for (const row of rows) {
    if (row.fault !== null) {
      last = null
      continue
    }
    if (last && row.width - last.width <= step) parts.at(-1)?.push(row)
    else parts.push([row])
    last = row
  }
  return parts
}

/** cents per square foot at a width, straight between the rows on either side; null off the known curve */
export function curveAt(rows: readonly CompareRow[], step: number, width: number): number | null {
  for (const part of curveParts(rows, step)) {
    for (const [index, row] of part.entries()) {
      if (row.width === width) return row.perSquareFoot
      const next = part[index + 1]
      if (next && row.width < width && width < next.width) {
        const share = (width - row.width) / (next.width - row.width)
        return row.perSquareFoot + share * (next.perSquareFoot - row.perSquareFoot)
      }
    }
  }
  return null
}
