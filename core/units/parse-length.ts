import { toGrid } from './grid.ts'
import { type Quantity, readQuantity } from './length-quantity.ts'
import { type LengthToken, lengthTokens } from './length-tokens.ts'
import { printLength } from './print-length.ts'
import { addRatios, type Ratio, ratio, timesWhole } from './ratio.ts'
import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'
import type { Ticks } from './ticks.ts'
import { unitFault } from './unit-fault.ts'

/** What is wrong with a typed length; `at` is the place in the text. */
export type LengthFault = TextFault

/** No length that a person types is longer, and exact arithmetic on thousands of digits is slow. */
const LONGEST_TEXT = 60

/**
 * Reads a length as people type it: `12'-6 1/2"`, `12-6 1/2`, `12 ft 6 in`, `12.5ft`, `150 1/2`, `3/4`.
 * A bare number is inches; two whole numbers with a dash between are feet and inches, while `6-1/2` is six and a half.
 * Fractions must lie on the 1/32 in grid; a decimal may miss it by 1/2000 in.
 */
export function parseLength(text: string): Result<Ticks, LengthFault> {
  if (text.trim() === '') {
    return fail({
      message: 'there is no length here',
      fix: 'write one such as 12\'-6 1/2" or 150 1/2',
      at: 0,
    })
  }
  if (text.length > LONGEST_TEXT) {
    return fail({
      message: 'this is too long to be a length',
      fix: 'write one such as 12\'-6 1/2"',
      at: LONGEST_TEXT,
    })
  }
  const tokens = lengthTokens(text)
  if (!tokens.ok) return tokens
  const signed = tokens.value[0]?.kind === 'dash' || tokens.value[0]?.kind === 'plus'
  const size = readSize(tokens.value, signed ? 1 : 0, text.length)
  if (!size.ok) return size
  const inches = tokens.value[0]?.kind === 'dash' ? timesWhole(size.value.inches, -1n) : size.value.inches
  return toGrid(inches, size.value.decimal)
}

interface Size {
  readonly inches: Ratio
  readonly decimal: boolean
}

function readSize(tokens: readonly LengthToken[], start: number, end: number): Result<Size, LengthFault> {
  const first = readQuantity(tokens, start, end)
  if (!first.ok) return first
  const quantity = first.value
  const unit = tokens[quantity.next]
  if (unit === undefined) return ok(asSize(quantity))
  switch (unit.kind) {
    case 'foot':
      return readAfterFeet(tokens, quantity, quantity.next + 1, end)
    case 'dash':
      return readAfterFeet(tokens, quantity, quantity.next, end)
    case 'inch':
      return readEnd(tokens, quantity, end)
    case 'word':
      return fail(unitFault(unit.text, quantity.value, unit.at))
    case 'slash':
    case 'plus':
      return fail(stray(unit))
    case 'number':
    case 'vulgar':
      return fail({
        message: 'two numbers stand side by side with no unit between them',
        fix: 'write feet and inches as 12\'-6" or 12-6, a fraction as 6 1/2',
        at: unit.at,
      })
  }
}

/** After feet come the end, or inches with or without a dash before them. */
function readAfterFeet(
  tokens: readonly LengthToken[],
  feet: Quantity,
  at: number,
  end: number,
): Result<Size, LengthFault> {
  const whole = timesWhole(feet.value, 12n)
  if (tokens[at] === undefined) return ok({ inches: whole, decimal: feet.form === 'decimal' })
  const second = readQuantity(tokens, tokens[at]?.kind === 'dash' ? at + 1 : at, end)
  if (!second.ok) return second
  const inches = second.value
  const unit = tokens[inches.next]
  if (unit?.kind === 'foot') {
    return fail({
      message: 'feet are given twice',
      fix: 'write feet once, then inches: 12\'-6"',
      at: unit.at,
    })
  }
  if (feet.form !== 'whole') {
    return fail({
      message: 'feet with a fraction or a decimal are followed by inches',
      fix: 'write whole feet before inches (12\'-6"), or the feet alone (12.5 ft)',
      at: feet.at,
    })
  }
  const checked = readEnd(tokens, inches, end)
  if (!checked.ok) return checked
  if (inches.value.numerator >= 12n * inches.value.denominator) return fail(aFootOfInches(whole, inches))
  return ok({ inches: addRatios(whole, inches.value), decimal: inches.form === 'decimal' })
}

/** After inches, with or without their mark, nothing may follow. */
function readEnd(tokens: readonly LengthToken[], inches: Quantity, end: number): Result<Size, LengthFault> {
  const unit = tokens[inches.next]
  if (unit?.kind === 'word') return fail(unitFault(unit.text, inches.value, unit.at))
  const extra = unit?.kind === 'inch' ? tokens[inches.next + 1] : unit
  if (extra === undefined) return ok(asSize(inches))
  const more = readQuantity(tokens, inches.next + (extra.kind === 'dash' ? 2 : 1), end)
  const nextUnit = more.ok ? tokens[more.value.next] : undefined
  if (nextUnit?.kind === 'foot') {
    return fail({
      message: 'the inches stand before the feet',
      fix: 'write feet first: 12\'-6"',
      at: nextUnit.at,
    })
  }
  if (nextUnit?.kind === 'inch') {
    return fail({
      message: 'inches are given twice',
      fix: 'write inches once, with a fraction: 6 1/2"',
      at: nextUnit.at,
    })
  }
  return fail(stray(extra))
}

function asSize(inches: Quantity): Size {
  return { inches: inches.value, decimal: inches.form === 'decimal' }
}

function aFootOfInches(feet: Ratio, inches: Quantity): LengthFault {
  const total = toGrid(addRatios(feet, inches.value), inches.form === 'decimal')
  return {
    message: 'the inches after feet make a foot or more',
    fix: `write inches below 12${total.ok ? `; if all of it is meant, ${printLength(total.value)}` : ''}`,
    at: inches.at,
  }
}

function stray(token: LengthToken): LengthFault {
  const sign = token.kind === 'vulgar' ? ratioText(ratio(token.numerator, token.denominator)) : token.text
  return {
    message: `"${sign}" does not belong here`,
    fix: 'write a length such as 12\'-6 1/2"',
    at: token.at,
  }
}

function ratioText(value: Ratio): string {
  return `${value.numerator}/${value.denominator}`
}
