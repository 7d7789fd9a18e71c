import { readDecimal } from './decimal.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

/** A typed number with at most two decimals, as a whole count of hundredths; thousands may be set apart by commas. */
export function readHundredths(text: string, at: number, sample: string): Result<number, TextFault> {
  const fix = `write it as ${sample}`
  if (text === '') return fail({ message: 'there is no number here', fix, at })
  if (text.length > 30) return fail({ message: 'this is too long to be a number', fix, at })
  const [whole = '', places = ''] = text.split('.', 2)
  if (whole.includes(',') && !/^\d{1,3}(?:,\d{3})+$/.test(whole)) {
    return fail({
      message: 'the commas do not set off thousands',
      fix: `${fix}; a decimal takes a point, and commas stand before each three digits`,
      at: at + text.indexOf(','),
    })
  }
  const value = readDecimal(text.replaceAll(',', places.includes(',') ? ',' : ''))
  if (value === null) return fail({ message: `"${text}" is not a number`, fix, at })
  const hundredths = value.numerator * 100n
  if (hundredths % value.denominator !== 0n) {
    return fail({ message: 'there are more than two decimals', fix, at: at + text.indexOf('.') + 3 })
  }
  return ok(Number(hundredths / value.denominator))
}
