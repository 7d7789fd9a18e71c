import { readHundredths } from './hundredths.ts'
import { type Cents, cents, MAX_CENTS } from './money.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

/** Reads dollars as people type them: `$1,234.50`, `1234.5`, `-$5`. Exact; at most two decimals. */
export function parseMoney(text: string): Result<Cents, TextFault> {
  const parts = /^\s*([-−])?\s*(\$)?\s*(.*?)\s*$/su.exec(text)
  const digits = parts?.[3] ?? ''
  const amount = readHundredths(
    digits,
    text.length - text.trimStart().length + text.trim().lastIndexOf(digits),
    '$1,234.50',
  )
  if (!amount.ok) return amount
  if (amount.value > MAX_CENTS) {
    return fail({ message: 'this is more than $1,000,000,000', fix: 'give a smaller sum', at: 0 })
  }
  return ok(cents(parts?.[1] === undefined ? amount.value : -amount.value))
}
