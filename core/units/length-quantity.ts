import { readDecimal } from './decimal.ts'
import type { LengthToken } from './length-tokens.ts'
import { addRatios, type Ratio, ratio } from './ratio.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

/** One number of a length: `12`, `12.5`, `1/2`, `6 1/2`, `6-1/2`, `6½`. */
export interface Quantity {
  readonly value: Ratio
  readonly form: 'whole' | 'decimal' | 'fraction'
  readonly at: number
  /** index of the first token after it */
  readonly next: number
}

/** Reads the number that starts at token i. */
export function readQuantity(
  tokens: readonly LengthToken[],
  i: number,
  end: number,
): Result<Quantity, TextFault> {
  const first = tokens[i]
  if (first?.kind === 'vulgar') {
    return ok({
      value: ratio(first.numerator, first.denominator),
      form: 'fraction',
      at: first.at,
      next: i + 1,
    })
  }
  if (first?.kind !== 'number') return fail(noNumber(first, end))
  if (tokens[i + 1]?.kind === 'slash') return readFraction(tokens, i, end)

  const value = readDecimal(first.text)
  if (value === null) {
    return fail({
      message: `"${first.text}" is not a number`,
      fix: 'use one decimal point, as in 12.5',
      at: first.at,
    })
  }
  const form = first.text.includes('.') ? 'decimal' : 'whole'
  const fractionAt = startOfFraction(tokens, i + 1)
  if (fractionAt === null) return ok({ value, form, at: first.at, next: i + 1 })

  const fraction = readQuantity(tokens, fractionAt, end)
  if (!fraction.ok) return fraction
  const part = fraction.value
  if (form === 'decimal') {
    return fail({
      message: 'a decimal is followed by a fraction',
      fix: 'write one or the other: 6.5 or 6 1/2',
      at: part.at,
    })
  }
  if (part.value.numerator >= part.value.denominator) {
    const improper = `${part.value.numerator}/${part.value.denominator}`
    return fail({
      message: `the fraction ${improper} after a whole number is one or more`,
      fix: 'write a fraction smaller than one, such as 6 1/2',
      at: part.at,
    })
  }
  return ok({ value: addRatios(value, part.value), form: 'fraction', at: first.at, next: part.next })
}

/** Where a fraction belonging to the whole number before token i starts, straight on or after a dash; or null. */
function startOfFraction(tokens: readonly LengthToken[], i: number): number | null {
  for (const start of tokens[i]?.kind === 'dash' ? [i + 1] : [i]) {
    const first = tokens[start]
    if (first?.kind === 'vulgar') return start
    if (first?.kind === 'number' && tokens[start + 1]?.kind === 'slash') return start
  }
  return null
}

function readFraction(tokens: readonly LengthToken[], i: number, end: number): Result<Quantity, TextFault> {
  const [over, slash, under] = [tokens[i], tokens[i + 1], tokens[i + 2]]
  const at = over?.at ?? end
  if (under?.kind !== 'number') {
    return fail({
      message: 'there is no number under the fraction bar',
      fix: 'write a fraction such as 1/2',
      at: under?.at ?? slash?.at ?? end,
    })
  }
  const [top, bottom] = [over?.kind === 'number' ? over.text : '', under.text]
  if (!/^\d+$/.test(top) || !/^\d+$/.test(bottom)) {
    return fail({
      message: `${top}/${bottom} has a decimal in a fraction`,
      fix: 'use whole numbers, such as 1/2',
      at,
    })
  }
  if (BigInt(bottom) === 0n) {
    return fail({
      message: `${top}/${bottom} divides by zero`,
      fix: 'write a fraction such as 1/2',
      at: under.at,
    })
  }
  return ok({ value: ratio(BigInt(top), BigInt(bottom)), form: 'fraction', at, next: i + 3 })
}

function noNumber(found: LengthToken | undefined, end: number): TextFault {
  if (found === undefined) {
    return {
      message: 'the length breaks off where a number should follow',
      fix: 'finish it, as in 12\'-6 1/2"',
      at: end,
    }
  }
  const sign = found.kind === 'vulgar' ? '' : found.text
  return {
    message: `"${sign}" stands where a number should be`,
    fix: 'write a length such as 12\'-6 1/2"',
    at: found.at,
  }
}
