import type { Fault } from '../../../job/index.ts'
import { type Cents, cents, fail, isDate, ok, type Result, type UnitPrice } from '../../../units/index.ts'
import { decimal, money, named, pricePerUnit, type Reader, text } from '../readers.ts'
import type { Refusal } from './types.ts'

/** Reads what was typed as the files of price books are read; the first thing that is wrong, in words. */
function readBy<T>(reader: Reader<T>, what: string, value: unknown): Result<T, Refusal> {
  const faults: Fault[] = []
  const read = reader(value, what, faults)
  const [fault] = faults
  if (read !== null && fault === undefined) return ok(read)
  return fail({
    message: fault?.message ?? `${what} cannot be read`,
    fix: fault?.fix ?? 'write it otherwise',
  })
}

export function readBoardPrice(typed: string): Result<Cents, Refusal> {
  return readBy(money(cents(1)), 'the price', typed)
}

export function readMoney(typed: string, what: string): Result<Cents, Refusal> {
  return readBy(money(cents(0)), what, typed)
}

/** '' says that nothing is stated. */
export function readMoneyOrNone(typed: string, what: string, least: number): Result<Cents | null, Refusal> {
  return typed.trim() === '' ? ok(null) : readBy(money(cents(least)), what, typed)
}

export function readGoodPrice(typed: string): Result<UnitPrice, Refusal> {
  const read = readBy(pricePerUnit, 'the price', typed)
  return read.ok && read.value === 0
    ? fail({ message: 'the price is nothing', fix: 'give what one costs' })
    : read
}

export function readNumber(
  typed: string,
  what: string,
  decimals: number,
  least: number,
  most: number,
): Result<number, Refusal> {
  const plain = typed.trim().replace(',', '.')
  // what is no figure is told as it was typed
  return readBy(decimal(decimals, least, most), what, /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : typed)
}

export function readNumberOrNone(
  typed: string,
  what: string,
  least: number,
  most: number,
): Result<number | null, Refusal> {
  return typed.trim() === '' ? ok(null) : readNumber(typed, what, 0, least, most)
}

export function readName(typed: string, what: string): Result<string, Refusal> {
  return readBy(named, what, typed.trim())
}

export function readText(typed: string, what: string): Result<string, Refusal> {
  return readBy(text, what, typed.trim())
}

export function readCode(typed: string): Result<string, Refusal> {
  return readText(typed, 'the code')
}

/** ISO, or as 11/1/2026. */
export function readDay(typed: string): Result<string, Refusal> {
  const [, month = '', day = '', year = ''] = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(typed.trim()) ?? []
  const iso = year === '' ? typed.trim() : `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  return isDate(iso)
    ? ok(iso)
    : fail({
        message: `“${typed.trim().slice(0, 40)}” is no day`,
        fix: 'write it as 2026-11-01 or 11/1/2026',
      })
}

/** `18: $15.00; 50: $14.00`, what each costs from so many on; '' for none. */
export function readBreaks(
  typed: string,
): Result<readonly { readonly from: number; readonly price: Cents }[], Refusal> {
  const steps: { from: number; price: Cents }[] = []
  for (const part of typed.split(';').filter((one) => one.trim() !== '')) {
    const [, from = '', price = ''] = /^\s*(\d+)\s*:\s*(\S.*)$/.exec(part) ?? []
    const count = readNumber(from, 'the count of a price break', 0, 2, 100_000)
    if (!count.ok)
      return fail({ ...count.error, fix: 'write count and price, such as 18: $15.00; 50: $14.00' })
    const each = readBoardPrice(price.trim())
    if (!each.ok) return each
    steps.push({ from: count.value, price: each.value })
  }
  return ok(steps.toSorted((a, b) => a.from - b.from))
}
