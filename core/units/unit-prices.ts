import { readDecimal } from './decimal.ts'
import { type UnitPrice, unitPrice } from './money.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

const SAMPLE = '$2.39 or $0.1026'
const TEN_THOUSANDTHS = 10_000n

/** Reads a price per unit as a yard writes it: `$2.39`, `0.1026`, `$1,250`. Exact; at most four decimals, below $1,000,000. */
export function parseUnitPrice(text: string): Result<UnitPrice, TextFault> {
  const fix = `write it as ${SAMPLE}`
  const digits = text.trim().replace(/^\$\s*/, '')
  if (digits === '') return fail({ message: 'there is no price here', fix })
  if (/^[-−]/.test(digits)) return fail({ message: 'a price is not below zero', fix })
  const parts = /^(\d{1,6}|\d{1,3}(?:,\d{3})?)?(?:\.(\d*))?$/.exec(digits)
  const value = parts === null ? null : readDecimal(digits.replaceAll(',', ''))
  if (value === null)
    return fail({ message: 'this is not a price in dollars', fix: `${fix}, below $1,000,000` })
  const whole = value.numerator * TEN_THOUSANDTHS
  return whole % value.denominator === 0n
    ? ok(unitPrice(Number(whole / value.denominator)))
    : fail({ message: 'there are more than four decimals', fix })
}

/** Dollars and cents, with 1/100 cents only where there are any: `$23.49`, `$1,150.00`, `$0.1026`. */
export function printUnitPrice(price: UnitPrice): string {
  const places = `${price % 10_000}`.padStart(4, '0')
  const dollars = `${Math.floor(price / 10_000)}`.replace(/\B(?=(?:\d{3})+$)/g, ',')
  return `$${dollars}.${places.endsWith('00') ? places.slice(0, 2) : places}`
}
