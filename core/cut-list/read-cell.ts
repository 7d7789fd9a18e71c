import {
  type Cents,
  fail,
  inches,
  ok,
  parseLength,
  parseMoney,
  printLength,
  type Result,
  type Ticks,
  ticks,
} from '../units/index.ts'
import type { ColumnUnit } from './headings.ts'

type Wrong = { readonly message: string; readonly fix: string }

/** Most of one row, and most pieces of one list. */
export const MOST_PIECES = 20_000

const LONGEST_TEXT = 100

/** More is a longer piece: a slip of the column. */
const MOST_WILD = inches(48)

/** A length above nothing; a number without a unit is in the column's. */
export function readLengthCell(text: string, unit: ColumnUnit): Result<Ticks, Wrong> {
  if (text === '') return fail({ message: 'there is no length here', fix: 'write one, or leave the row out' })
  const bare = /^[\d\s./½¼¾⅛⅜⅝⅞]+$/.test(text)
  const read = parseLength(bare && unit === 'ft' ? `${text} ft` : text)
  if (!read.ok) return fail({ message: `"${short(text)}": ${read.error.message}`, fix: read.error.fix })
  if (read.value > 0) return read
  return fail({ message: `"${short(text)}" is not longer than nothing`, fix: 'write a length above 0' })
}

/** How far a piece runs wild; an empty cell and 0 are nothing. */
export function readWildCell(text: string, unit: ColumnUnit): Result<Ticks, Wrong> {
  if (text === '' || /^0+(\.0*)?$/.test(text)) return ok(ticks(0))
  const read = readLengthCell(text, unit)
  if (!read.ok || read.value <= MOST_WILD) return read
  const fix = `write what is cut off in place, ${printLength(MOST_WILD)} at most`
  return fail({ message: `"${short(text)}" is more than a piece runs wild`, fix })
}

/** A whole number above nothing; spreadsheets may write it as 4.0 or 1,200. */
export function readCountCell(text: string): Result<number, Wrong> {
  const digits = /^(\d{1,3}(?:,\d{3})+|\d{1,9})(?:\.0*)?$/.exec(text)?.[1]
  const count = digits === undefined ? Number.NaN : Number(digits.replaceAll(',', ''))
  if (count >= 1 && count <= MOST_PIECES) return ok(count)
  if (text === '') return fail({ message: 'there is no number here', fix: 'write how many, such as 1' })
  if (count === 0)
    return fail({ message: 'there are 0 of them', fix: 'write 1 or more, or leave the row out' })
  if (count > MOST_PIECES)
    return fail({ message: `${count} is more than ${MOST_PIECES}`, fix: 'split the list into smaller ones' })
  return fail({ message: `"${short(text)}" is not a whole number`, fix: 'write how many, such as 4' })
}

/** A price of one board; nothing costs nothing but what is on hand. */
export function readPriceCell(text: string, offcut: boolean): Result<Cents, Wrong> {
  const read = parseMoney(text)
  if (!read.ok) return fail({ message: `"${short(text)}": ${read.error.message}`, fix: read.error.fix })
  if (read.value > 0 || (offcut && read.value === 0)) return read
  return fail({
    message: `"${short(text)}" is no price of a board`,
    fix: 'write what one board costs; what is on hand already is an offcut',
  })
}

/** A mark, a product or a code: one line, of a length that fits a drawing. */
export function readTextCell(text: string): Result<string, Wrong> {
  const plain = text.replace(/[\s\p{Cc}]+/gu, ' ').trim()
  return plain.length <= LONGEST_TEXT
    ? ok(plain)
    : fail({ message: `this has ${plain.length} characters`, fix: `use at most ${LONGEST_TEXT}` })
}

/** As much of a foreign text as a sentence bears. */
export function short(text: string): string {
  const plain = text.replace(/[\s\p{Cc}]+/gu, ' ')
  return plain.length > 40 ? `${plain.slice(0, 39)}…` : plain
}
