import { readDecimal } from './decimal.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

/** No line of a deck holds more of anything. */
const MOST = 100_000n

/** Reads a quantity, `40`, `12.5`, `1,200`, as a whole count of 1/1000. Exact; at most three decimals, up to 100,000. */
export function parseQuantity(text: string): Result<number, TextFault> {
  const fix = 'write a number such as 40 or 12.5'
  const digits = text.trim()
  if (digits === '') return fail({ message: 'there is no quantity here', fix })
  if (/^[-−]/.test(digits)) return fail({ message: 'a quantity is not below zero', fix })
  const grouped = /^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/.test(digits)
  const value = digits.length > 20 ? null : readDecimal(grouped ? digits.replaceAll(',', '') : digits)
  if (value === null) return fail({ message: 'this is not a number', fix })
  if (value.numerator > MOST * value.denominator)
    return fail({ message: 'this is more than 100,000', fix: 'give a smaller quantity' })
  const thousandths = value.numerator * 1000n
  return thousandths % value.denominator === 0n
    ? ok(Number(thousandths / value.denominator))
    : fail({ message: 'there are more than three decimals', fix })
}
