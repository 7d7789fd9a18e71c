import type { CompareRow } from '../../../core/compare/index.ts'
import { feet, printLength, TICKS_PER_FOOT, type Ticks } from '../../../core/units/index.ts'
import { plural, printDollars } from '../../state/print.ts'

/** A width near the job's that is worth a look, and what taking it would change. */
export interface Neighbour {
  readonly width: Ticks
  readonly perSquareFoot: number
  /** change of price (or of cost, where an owner builds) in cents */
  readonly change: number
  readonly saves: boolean
  readonly text: string
}

const REACH = feet(4)

export interface Here {
  readonly width: Ticks
  readonly depth: Ticks
  /** price, or cost where an owner builds, in cents */
  readonly amount: number
  readonly perSquareFoot: number
  readonly basis: 'price' | 'cost'
  /** every framing run of it comes whole from one board */
  readonly whole: boolean
}

/**
 * The width to either side that is worth a look, within 4 ft: where the present width is jointed, the nearest that is
 * not; else the nearest that costs less per square foot than its own neighbours and than the present width.
 */
export function neighbours(rows: readonly CompareRow[], here: Here): readonly Neighbour[] {
  const sides = [
    rows.filter((row) => row.width < here.width && here.width - row.width <= REACH).toReversed(),
    rows.filter((row) => row.width > here.width && row.width - here.width <= REACH),
  ]
  return sides.flatMap((outward) => {
    const whole = here.whole ? undefined : outward.find((row) => sound(row) && row.fitsStock)
    const best = whole ?? outward.find((row, index) => sound(row) && isLow(outward, index, here))
    return best ? [named(best, here)] : []
  })
}

function sound(row: CompareRow): boolean {
  return row.fault === null && row.failing === 0
}

/** Less per square foot than the present width, than the width before it and than the one after it; both must be known. */
function isLow(outward: readonly CompareRow[], index: number, here: Here): boolean {
  const row = outward[index]
  const after = outward[index + 1]
  if (!row || !after || after.fault !== null || row.perSquareFoot >= here.perSquareFoot) return false
  const before = index === 0 ? here.perSquareFoot : (outward[index - 1]?.perSquareFoot ?? here.perSquareFoot)
  return row.perSquareFoot < before && row.perSquareFoot < after.perSquareFoot
}

function named(row: CompareRow, here: Here): Neighbour {
  const change = row[here.basis] - here.amount
  const area = ((row.width - here.width) / TICKS_PER_FOOT) * (here.depth / TICKS_PER_FOOT)
  const joints = row.framingJoints === 0 ? 'no framing joints' : plural(row.framingJoints, 'framing joint')
  const what = area > 0 ? `${signed(change)} for ${area.toFixed(1)} sq ft` : `${joints}, ${signed(change)}`
  return {
    width: row.width,
    perSquareFoot: row.perSquareFoot,
    change,
    saves: change < 0,
    text: `${printLength(row.width)}: ${what}`,
  }
}

function signed(amount: number): string {
  return `${amount < 0 ? '−' : '+'}${printDollars(Math.abs(amount))}`
}
