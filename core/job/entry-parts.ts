import {
  type Cents,
  cents,
  fail,
  isDate,
  ok,
  parseMoney,
  parseQuantity,
  parseUnitPrice,
  type Result,
  type UnitPrice,
  unitPrice,
} from '../units/index.ts'
import type { KeptLine } from './costing-entries.ts'
import { excerpt, kindOf } from './json-shape.ts'
import type { Fault, JsonValue } from './types.ts'

export type Wrong = Pick<Fault, 'message' | 'fix'>

/** No purchase for a deck comes to more, in cents. */
const MOST_SUM = 100_000_000

/** Text in quotes, up to so many characters. */
export function words(most: number) {
  return (stated: JsonValue): Result<string, Wrong> => {
    if (typeof stated !== 'string')
      return fail({ message: `this is ${kindOf(stated)}`, fix: 'give text in quotes' })
    return stated.length > most
      ? fail({ message: `this has ${stated.length} characters`, fix: `use at most ${most}` })
      : ok(stated)
  }
}

/** A day of the calendar, or an empty text. */
export function day(stated: JsonValue): Result<string, Wrong> {
  return typeof stated === 'string' && (stated === '' || isDate(stated))
    ? ok(stated)
    : fail({ message: `${shown(stated)} is no day`, fix: 'write it as 2026-04-02' })
}

/** A quantity in 1/1000, as a number or as text. */
export function quantity(stated: JsonValue): Result<number, Wrong> {
  if (typeof stated !== 'number' && typeof stated !== 'string')
    return fail({ message: `this is ${kindOf(stated)}`, fix: 'give a number such as 12.5' })
  return because(stated, parseQuantity(`${stated}`))
}

/** What goes back to its seller is below zero. */
export function signedQuantity(stated: JsonValue): Result<number, Wrong> {
  const sign = /^\s*[-−]\s*/.exec(`${stated}`)?.[0]
  if (sign === undefined) return quantity(stated)
  const read = quantity(`${stated}`.slice(sign.length))
  return read.ok ? ok(read.value === 0 ? 0 : -read.value) : read
}

/** A sum in cents, below zero for what was paid back. */
export function sum(stated: JsonValue): Result<Cents, Wrong> {
  if (typeof stated !== 'number' && typeof stated !== 'string')
    return fail({ message: `this is ${kindOf(stated)}`, fix: 'give a sum such as "$62.40"' })
  const read = because(stated, parseMoney(`${stated}`))
  if (!read.ok) return read
  return Math.abs(read.value) > MOST_SUM
    ? fail({ message: 'this is more than $1,000,000', fix: 'give a smaller sum' })
    : ok(cents(read.value))
}

/** A price for one of a unit, in 1/100 cent; a number may be as great as a stated sum. */
export function each(stated: JsonValue): Result<UnitPrice, Wrong> {
  if (typeof stated === 'string') return because(stated, parseUnitPrice(stated))
  const hundredths = typeof stated === 'number' ? Math.round(stated * 10_000) : Number.NaN
  return hundredths >= 0 && hundredths <= MOST_SUM * 100
    ? ok(unitPrice(hundredths))
    : fail({ message: `${shown(stated)} is no price`, fix: 'give a price such as "$2.39"' })
}

/** A factor in 1/10,000. */
export function factor(stated: JsonValue): Result<number, Wrong> {
  const tenThousandths = typeof stated === 'number' ? Math.round(stated * 10_000) : Number.NaN
  return tenThousandths >= 1000 && tenThousandths <= 200_000
    ? ok(tenThousandths)
    : fail({ message: `${shown(stated)} is no factor`, fix: 'give a number from 0.1 to 20' })
}

/** A count of boards. */
export function whole(stated: JsonValue): Result<number, Wrong> {
  return typeof stated === 'number' && Number.isInteger(stated) && stated >= 0 && stated <= 10_000
    ? ok(stated)
    : fail({ message: `${shown(stated)} is no count of boards`, fix: 'give a whole number from 0 to 10,000' })
}

export function flag(stated: JsonValue): Result<boolean, Wrong> {
  return typeof stated === 'boolean'
    ? ok(stated)
    : fail({ message: `this is ${kindOf(stated)}`, fix: 'give true or false, without quotes' })
}

/** What a line counts toward. */
export function part(stated: JsonValue): Result<KeptLine['part'], Wrong> {
  return stated === 'material' || stated === 'labour' || stated === 'other'
    ? ok(stated)
    : fail({ message: `part cannot be ${shown(stated)}`, fix: 'write "material" or "labour" or "other"' })
}

function because<T>(stated: string | number, read: Result<T, Wrong>): Result<T, Wrong> {
  return read.ok ? read : fail({ message: `${shown(stated)}: ${read.error.message}`, fix: read.error.fix })
}

function shown(stated: JsonValue): string {
  return typeof stated === 'string' || typeof stated === 'number'
    ? `"${excerpt(`${stated}`)}"`
    : kindOf(stated)
}
