import { readHundredths } from './hundredths.ts'
import { type Share, share } from './money.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

/** Reads a share in percent, with or without its sign: `32 %`, `8.25%`, `8.25`. At most two decimals. */
export function parseShare(text: string): Result<Share, TextFault> {
  const parts = /^\s*([-−])?\s*(.*?)\s*%?\s*$/su.exec(text)
  const digits = parts?.[2] ?? ''
  const amount = readHundredths(digits, text.indexOf(digits), '8.25 %')
  if (!amount.ok) return amount
  if (amount.value > 1_000_000)
    return fail({ message: 'this is more than 10,000 %', fix: 'give a smaller share', at: 0 })
  return ok(share(parts?.[1] === undefined ? amount.value : -amount.value))
}
