import { readDecimal } from './decimal.ts'
import { printInches, printLength } from './print-length.ts'
import { addRatios, floorOf, isWhole, type Ratio, ratio, timesWhole } from './ratio.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'
import { MAX_TICKS, TICKS_PER_INCH, type Ticks, ticks } from './ticks.ts'

/**
 * How far a decimal may lie off the 1/32 in grid and still mean the grid's value: 1/2000 in, a rounding in the
 * third place. 12.3333 ft is 12'-4"; 12.33 ft, 1/32 in from nothing, is not guessed at.
 */
const DECIMAL_SLACK: Ratio = ratio(32n, 2000n)

const TOO_LONG: TextFault = { message: 'this is more than 4,000 ft', fix: 'give a length within 4,000 ft' }

/**
 * Brings exact inches to the 1/32 in grid.
 * @param decimal whether it was written with a decimal point: then a rounding of its last place is forgiven
 */
export function toGrid(inches: Ratio, decimal: boolean): Result<Ticks, TextFault> {
  const exact = timesWhole(inches, 32n)
  const below = floorOf(exact)
  if (below < -BigInt(MAX_TICKS) || below + (isWhole(exact) ? 0n : 1n) > BigInt(MAX_TICKS))
    return fail(TOO_LONG)
  if (isWhole(exact)) return ok(ticks(Number(below)))
  if (decimal) {
    if (notAbove(addRatios(exact, ratio(-below)), DECIMAL_SLACK)) return ok(ticks(Number(below)))
    if (notAbove(addRatios(ratio(below + 1n), timesWhole(exact, -1n)), DECIMAL_SLACK)) {
      return ok(ticks(Number(below + 1n)))
    }
  }
  return fail(offGrid(ticks(Number(below)), ticks(Number(below + 1n))))
}

/** Inches as a number, as in a job file: its shortest decimal is read by the same rule as a typed one. */
export function lengthFromInches(inches: number): Result<Ticks, TextFault> {
  if (!Number.isFinite(inches))
    return fail({ message: 'this is not a number', fix: 'give inches, such as 150.5' })
  if (Math.abs(inches) > MAX_TICKS / TICKS_PER_INCH) return fail(TOO_LONG)
  // the only numbers within reach that are printed with an exponent are smaller than any rounding
  const size = readDecimal(`${Math.abs(inches)}`) ?? ratio(0n)
  return toGrid(timesWhole(size, inches < 0 ? -1n : 1n), true)
}

function notAbove(a: Ratio, b: Ratio): boolean {
  return a.numerator * b.denominator <= b.numerator * a.denominator
}

function offGrid(below: Ticks, above: Ticks): TextFault {
  return {
    message: 'lengths are kept to 1/32 in, and this lies between two of those marks',
    fix: `write ${printLength(below)} (${printInches(below)}) or ${printLength(above)} (${printInches(above)})`,
  }
}

/** Nearest mark of the 1/32 in grid, for a suggestion only; null beyond 4,000 ft. */
export function toNearestTick(inches: Ratio): Ticks | null {
  const nearest = floorOf(addRatios(timesWhole(inches, 32n), ratio(1n, 2n)))
  return nearest > BigInt(MAX_TICKS) || nearest < -BigInt(MAX_TICKS) ? null : ticks(Number(nearest))
}
