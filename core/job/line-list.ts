import {
  fail,
  ok,
  parseQuantity,
  parseUnitPrice,
  printUnitPrice,
  type Result,
  type UnitPrice,
} from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** What a person states for one printed line of the price, in place of what was counted or looked up. */
export interface StatedLine {
  /** id of the line, as it stands in an estimate */
  readonly line: string
  /** in 1/1000 of the line's unit; null: as counted */
  readonly thousandths: number | null
  /** null: as in the price book */
  readonly price: UnitPrice | null
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const MOST = 200
const SAMPLE = 'good-joist-hanger-2x10: 40 at $2.10; labour-task-joist: 12.5; other-permit: at $350'
/** A name in quotes as JSON has them, or one without the signs that stand between entries; then what is stated. */
const ENTRY = /\s*(?:("(?:[^"\\\n]|\\.)*")|([^":;\n]+?))\s*:([^;\n]*)(?:[;\n]|$)/uy

/**
 * Reads lines stated by hand: a line's id, then a quantity, a price after "at", or both. Semicolons or line ends stand
 * between them; an id that holds one of the signs stands in quotes. The first fault is told; an empty text is no lines.
 */
export function readStatedLines(text: string): Result<readonly StatedLine[], Wrong> {
  const read = new Map<string, StatedLine>()
  let at = 0
  while (at < text.length) {
    const gap = /[\s;]*/y
    gap.lastIndex = at
    gap.exec(text)
    at = gap.lastIndex
    if (at >= text.length) break
    ENTRY.lastIndex = at
    const [whole = '', quoted, bare, stated = ''] = ENTRY.exec(text) ?? []
    const line = quoted === undefined ? bare : unquoted(quoted)
    if (line === undefined || line === '')
      return fail({ message: `"${excerpt(text.slice(at))}" names no line`, fix: `write it as ${SAMPLE}` })
    if (read.has(line))
      return fail({ message: `the line "${excerpt(line)}" is stated twice`, fix: 'state each line once' })
    const one = readStated(line, stated)
    if (!one.ok) return one
    read.set(line, one.value)
    at += whole.length
  }
  return read.size > MOST
    ? fail({ message: `${read.size} lines are stated`, fix: `state at most ${MOST}` })
    : ok([...read.values()])
}

/** A list that was read with its job. Throws on any other text: that is a bug, not input. */
export function statedLines(text: string): readonly StatedLine[] {
  const read = readStatedLines(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

/** As they are read again; what states nothing is left out. */
export function printStatedLines(lines: readonly StatedLine[]): string {
  return lines
    .filter(({ thousandths, price }) => thousandths !== null || price !== null)
    .map(({ line, thousandths, price }) => {
      const words = [
        ...(thousandths === null ? [] : [`${thousandths / 1000}`]),
        ...(price === null ? [] : [`at ${printUnitPrice(price)}`]),
      ]
      return `${printId(line)}: ${words.join(' ')}`
    })
    .join('; ')
}

/** The lines with one stated otherwise; null puts what was computed back. Its place among the others stays. */
export function withStatedLine(
  lines: readonly StatedLine[],
  line: string,
  change: Partial<Omit<StatedLine, 'line'>>,
): readonly StatedLine[] {
  const before = lines.find((one) => one.line === line) ?? { line, thousandths: null, price: null }
  const after = { ...before, ...change }
  return lines.some((one) => one.line === line)
    ? lines.map((one) => (one.line === line ? after : one))
    : [...lines, after]
}

function readStated(line: string, stated: string): Result<StatedLine, Wrong> {
  const whose = `the line "${excerpt(line)}"`
  const between = /(?:^|\s)at(?=\s|\$|$)/iu.exec(stated)
  const quantity = stated.slice(0, between?.index).trim()
  const after = between === null ? undefined : stated.slice(between.index + between[0].length).trim()
  if (quantity === '' && after === undefined)
    return fail({ message: `${whose} is given neither quantity nor price`, fix: `write it as ${SAMPLE}` })
  const thousandths = quantity === '' ? ok(null) : parseQuantity(quantity)
  if (!thousandths.ok)
    return fail({
      message: `${whose}, "${excerpt(quantity)}": ${thousandths.error.message}`,
      fix: thousandths.error.fix,
    })
  const price = after === undefined ? ok(null) : parseUnitPrice(after)
  if (!price.ok)
    return fail({
      message: `${whose}, "${excerpt(after ?? '')}": ${price.error.message}`,
      fix: price.error.fix,
    })
  return ok({ line, thousandths: thousandths.value, price: price.value })
}

function printId(line: string): string {
  const plain = /^[^\s":;](?:[^":;\n\r\u2028\u2029]*[^\s":;])?$/u.test(line)
  return plain ? line : JSON.stringify(line)
}

function unquoted(text: string): string | undefined {
  try {
    return String(JSON.parse(text))
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}
