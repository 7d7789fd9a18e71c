import {
  type Cents,
  fail,
  ok,
  parseLength,
  parseMoney,
  parseShare,
  printLength,
  type Result,
  type Share,
  type Ticks,
} from '../../../../core/units/index.ts'

/** A place on a board or a length out of it; the fault is a sentence. */
export function readPlace(text: string, longest: Ticks): Result<Ticks, string> {
  const read = parseLength(text)
  if (!read.ok) return fail(`${read.error.message}; ${read.error.fix}.`)
  if (read.value < 0 || read.value > longest)
    return fail(`"${text}" does not lie on the board, which is ${printLength(longest)} long.`)
  return ok(read.value)
}

/** How many boards the yard has left; nothing written: enough. */
export function readLeft(text: string): Result<number | null, string> {
  if (text.trim() === '') return ok(null)
  const count = Number(text)
  return Number.isInteger(count) && count >= 0 && count <= 5000
    ? ok(count)
    : fail(`"${text}" is no number of boards: write a whole number, 0 for none.`)
}

/** What the yard asks for a board now; nothing written: as planned. */
export function readPrice(text: string): Result<Cents | null, string> {
  if (text.trim() === '') return ok(null)
  const read = parseMoney(text)
  if (!read.ok) return fail(`${read.error.message}; ${read.error.fix}.`)
  return read.value >= 0 ? ok(read.value) : fail('A board does not cost less than nothing: write dollars.')
}

/** What the yard pays back, as a share of the price; nothing written: it takes nothing back. */
export function readRefund(text: string): Result<Share, string> {
  const read = parseShare(text.trim() === '' ? '0' : text)
  if (!read.ok) return fail(`${read.error.message}; ${read.error.fix}.`)
  return read.value >= 0 && read.value <= 10_000
    ? ok(read.value)
    : fail('The yard pays back between 0 and 100 % of the price.')
}
