import { type LumberSize, lumberSizes } from '../data/index.ts'
import {
  fail,
  feet,
  ok,
  parseLength,
  printLength,
  type Result,
  TICKS_PER_FOOT,
  type Ticks,
} from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import { nearestName } from './nearest-name.ts'
import type { Fault } from './types.ts'

type Wrong = Pick<Fault, 'message' | 'fix'>

/** One stock length of the boards of one size. */
export interface StockLength {
  readonly size: LumberSize
  readonly length: Ticks
}

/** So many boards of one stock length at most. */
export interface StockCount extends StockLength {
  readonly count: number
}

const SHORTEST = feet(2)
const LONGEST = feet(40)
const LENGTHS = '2x10: 14, 18; 5/4x6: 12'
const COUNTS = '2x10: 3 of 16, 2 of 18; 5/4x6: 10 of 12'

/** Reads stock lengths size by size, as typed: `2x10: 14, 18; 5/4x6: 12`. Bare numbers are feet, as a yard calls them. */
export function readStockLengths(text: string): Result<readonly StockLength[], Wrong> {
  return readEntries(text, LENGTHS, (entry, size) => {
    const length = readStock(entry)
    return length.ok ? ok({ size, length: length.value }) : length
  })
}

/** Reads counts of boards size by size: `2x10: 3 of 16, 2 of 18`. */
export function readStockCounts(text: string): Result<readonly StockCount[], Wrong> {
  return readEntries(text, COUNTS, (entry, size) => {
    const [, count = '', stated = ''] = /^(\d{1,4})\s*(?:of|×)\s*(\S.*)$/i.exec(entry) ?? []
    if (count === '')
      return fail({ message: `"${excerpt(entry)}" is no count of boards`, fix: `write it as ${COUNTS}` })
    if (Number(count) === 0)
      return fail({
        message: `"${excerpt(entry)}" allows none`,
        fix: 'name the length among those to do without',
      })
    const length = readStock(stated)
    return length.ok ? ok({ size, length: length.value, count: Number(count) }) : length
  })
}

/** A list that was read with its job. Throws on any other text: that is a bug, not input. */
export function stockLengths(text: string): readonly StockLength[] {
  return mustRead(readStockLengths(text))
}

export function stockCounts(text: string): readonly StockCount[] {
  return mustRead(readStockCounts(text))
}

/** The list as a person writes it. */
export function printStockLengths(list: readonly StockLength[]): string {
  return printEntries(list, ({ length }) => printStock(length))
}

export function printStockCounts(list: readonly StockCount[]): string {
  return printEntries(list, ({ length, count }) => `${count} of ${printStock(length)}`)
}

function mustRead<T>(read: Result<T, Wrong>): T {
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

function readEntries<T extends StockLength>(
  text: string,
  sample: string,
  readEntry: (entry: string, size: LumberSize) => Result<T, Wrong>,
): Result<readonly T[], Wrong> {
  const read: T[] = []
  for (const group of split(text, /[;\n]/)) {
    const [, stated = '', list = ''] = /^([^:]+):(.*)$/.exec(group) ?? []
    if (stated === '')
      return fail({ message: `"${excerpt(group)}" names no size of board`, fix: `write it as ${sample}` })
    const size = readSize(stated)
    if (!size.ok) return size
    const entries = split(list, /,/)
    if (entries.length === 0)
      return fail({ message: `no length follows ${size.value}`, fix: `write it as ${sample}` })
    for (const entry of entries) {
      const one = readEntry(entry, size.value)
      if (!one.ok) return one
      const { length } = one.value
      if (read.some((other) => other.size === size.value && other.length === length)) {
        return fail({
          message: `${size.value} of ${printStock(length)} ft is named twice`,
          fix: 'name each length of a size once',
        })
      }
      read.push(one.value)
    }
  }
  return ok(read)
}

function readSize(stated: string): Result<LumberSize, Wrong> {
  const plain = stated.toLowerCase().replaceAll('×', 'x').replace(/\s+/g, '')
  const size = lumberSizes.find((known) => known === plain)
  if (size !== undefined) return ok(size)
  const nearest = nearestName(plain, lumberSizes)
  return fail({
    message: `no board has the size "${excerpt(stated.trim())}"`,
    fix: nearest === null ? `the sizes are ${lumberSizes.join(', ')}` : `the nearest size is ${nearest}`,
  })
}

function readStock(stated: string): Result<Ticks, Wrong> {
  const feetOnly = /^\d{1,3}$/.test(stated)
  const length = parseLength(feetOnly ? `${stated} ft` : stated)
  if (!length.ok)
    return fail({ message: `"${excerpt(stated)}": ${length.error.message}`, fix: length.error.fix })
  if (length.value >= SHORTEST && length.value <= LONGEST) return length
  return fail({
    message: `no board is sold ${printLength(length.value)} long`,
    fix: `give a stock length from ${printLength(SHORTEST)} to ${printLength(LONGEST)}; a bare number is feet`,
  })
}

function printEntries<T extends StockLength>(list: readonly T[], print: (entry: T) => string): string {
  return [...Map.groupBy(list, ({ size }) => size)]
    .map(([size, entries]) => `${size}: ${entries.map(print).join(', ')}`)
    .join('; ')
}

/** A stock length as a yard calls it, in feet; an odd one in feet and inches. */
function printStock(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${length / TICKS_PER_FOOT}` : printLength(length)
}

function split(text: string, by: RegExp): readonly string[] {
  return text
    .split(by)
    .map((part) => part.trim())
    .filter((part) => part !== '')
}
