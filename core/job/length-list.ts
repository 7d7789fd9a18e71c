import { fail, ok, parseLength, type Result, type Ticks } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

type Wrong = Pick<Fault, 'message' | 'fix'>

/** A length that a person states for one edge of the outline. */
export interface EdgeLength {
  readonly edge: number
  readonly length: Ticks
}

/** Reads lengths as typed, `8 ft; 16 ft`, semicolons or lines between them; each over 0. */
export function readLengths(text: string): Result<readonly Ticks[], Wrong> {
  const read: Ticks[] = []
  for (const entry of entriesOf(text)) {
    const length = positive(entry)
    if (!length.ok) return length
    read.push(length.value)
  }
  return ok(read)
}

/** A beam across the joists, by how far it lies from where they start. */
interface MiddleBeam {
  readonly at: Ticks
  readonly set: 'dropped' | 'flush'
}

/** Reads middle beams as typed, `8 ft; 16 ft flush`, semicolons or lines between them; each length over 0. */
export function readMiddleBeams(text: string): Result<readonly MiddleBeam[], Wrong> {
  const read: MiddleBeam[] = []
  for (const entry of entriesOf(text)) {
    const [, stated = '', set = ''] = /^(.*?)(?:[\s:,]+(flush|dropped))?$/i.exec(entry) ?? []
    const length = positive(stated)
    if (!length.ok) return length
    read.push({ at: length.value, set: set.toLowerCase() === 'flush' ? 'flush' : 'dropped' })
  }
  return ok(read)
}

/** Reads lengths edge by edge, as typed: `3: 18 in; 5: 1 ft`. */
export function readEdgeLengths(text: string): Result<readonly EdgeLength[], Wrong> {
  const read: EdgeLength[] = []
  for (const entry of entriesOf(text)) {
    const [, number = '', stated = ''] = /^(?:edge\s*)?(\d{1,3})\s*[:=]\s*(.+)$/i.exec(entry) ?? []
    const edge = Number(number)
    if (edge < 1)
      return fail({ message: `"${excerpt(entry)}" names no edge`, fix: 'write it as 3: 18 in; 5: 1 ft' })
    if (read.some((one) => one.edge === edge))
      return fail({ message: `edge ${edge} is named twice`, fix: 'give one length for each edge' })
    const length = positive(stated)
    if (!length.ok) return length
    read.push({ edge, length: length.value })
  }
  return ok(read)
}

/** Lengths that were read with their job. Throws on any other text: that is a bug, not input. */
export function lengthList(text: string): readonly Ticks[] {
  return asRead(readLengths(text))
}

/** Middle beams that were read with their job. Throws on any other text: that is a bug, not input. */
export function middleBeamList(text: string): readonly MiddleBeam[] {
  return asRead(readMiddleBeams(text))
}

/** Lengths by edge that were read with their job. Throws on any other text: that is a bug, not input. */
export function edgeLengthList(text: string): readonly EdgeLength[] {
  return asRead(readEdgeLengths(text))
}

function asRead<Value>(read: Result<Value, Wrong>): Value {
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

function entriesOf(text: string): readonly string[] {
  return text
    .split(/[;\n]/)
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '')
}

function positive(text: string): Result<Ticks, Wrong> {
  const length = parseLength(text)
  if (!length.ok)
    return fail({ message: `"${excerpt(text)}": ${length.error.message}`, fix: length.error.fix })
  return length.value > 0
    ? length
    : fail({ message: `"${excerpt(text)}" is not over 0`, fix: 'give a length over 0' })
}
