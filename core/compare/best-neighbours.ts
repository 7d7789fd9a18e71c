import { feet } from '../units/index.ts'
import type { CompareRow } from './types.ts'

/** What must be known of the deck's own width to tell which neighbours are better. */
type Own = Pick<CompareRow, 'width' | 'perSquareFoot' | 'fitsStock'>

/** How far a neighbour is looked for. */
const REACH = feet(4)

/**
 * The width to either side that is worth a look, within 4 ft: where the own width is jointed, the nearest that is not;
 * else the nearest that costs less per square foot than its own neighbours and than the own width. A width that fails
 * a check or has no price is never named. Rows in the order of their widths.
 */
export function bestNeighbours(rows: readonly CompareRow[], own: Own): readonly CompareRow[] {
  const sides = [
    rows.filter((row) => row.width < own.width && own.width - row.width <= REACH).toReversed(),
    rows.filter((row) => row.width > own.width && row.width - own.width <= REACH),
  ]
  return sides.flatMap((outward) => {
    const whole = own.fitsStock ? undefined : outward.find((row) => isSound(row) && row.fitsStock)
    return whole ?? outward.find((row, index) => isSound(row) && isLow(outward, index, own)) ?? []
  })
}

function isSound(row: CompareRow): boolean {
  return row.fault === null && row.failing === 0
}

/** Less per square foot than the own width, than the width before it and than the one after it; both must be known. */
function isLow(outward: readonly CompareRow[], index: number, own: Own): boolean {
  const row = outward[index]
  const after = outward[index + 1]
  if (!row || !after || after.fault !== null || row.perSquareFoot >= own.perSquareFoot) return false
  const before = index === 0 ? own.perSquareFoot : (outward[index - 1]?.perSquareFoot ?? own.perSquareFoot)
  return row.perSquareFoot < before && row.perSquareFoot < after.perSquareFoot
}
