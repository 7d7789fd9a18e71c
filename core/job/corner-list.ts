import { fail, ok, parseLength, type Result, type Ticks } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** A place on the plan: x along the wall from the deck's left end, y away from it. */
export interface Place {
  readonly x: Ticks
  readonly y: Ticks
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const SAMPLE = "0, 0; 24', 0; 24', 8'; 14', 8'; 14', 14'; 0, 14'"

/** More corners than this are no deck that a person frames. */
const MOST_CORNERS = 40

/**
 * Reads corners in order, as typed: `0, 0; 24', 0; 24', 8'` with semicolons or lines between them, or
 * `0 0, 24' 0, 24' 8'` with commas between corners. The first fault is told; an empty text has none.
 */
export function readCorners(text: string): Result<readonly Place[], Wrong> {
  const entries = entriesOf(text)
  if (entries.length === 0) return ok([])
  if (entries.length > MOST_CORNERS) {
    return fail({
      message: `there are ${entries.length} corners`,
      fix: `give at most ${MOST_CORNERS}`,
    })
  }
  const corners: Place[] = []
  for (const [i, entry] of entries.entries()) {
    const read = readPlace(entry)
    if (!read.ok)
      return fail({
        message: `corner ${i + 1}, "${excerpt(entry)}": ${read.error.message}`,
        fix: read.error.fix,
      })
    const same = corners.findIndex(({ x, y }) => x === read.value.x && y === read.value.y)
    if (same >= 0) {
      return fail({
        message: `corner ${i + 1} stands where corner ${same + 1} does`,
        fix: 'name each corner once; the outline closes itself',
      })
    }
    corners.push(read.value)
  }
  return corners.length < 3
    ? fail({
        message: `an outline of ${corners.length} corners has no area`,
        fix: `give three at least, as ${SAMPLE}`,
      })
    : ok(corners)
}

/** Corners that were read with their job. Throws on any other text: that is a bug, not input. */
export function cornerList(text: string): readonly Place[] {
  const read = readCorners(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

function entriesOf(text: string): readonly string[] {
  const byLine = /[;\n]/.test(text)
  const parts = byLine ? text.split(/[;\n]/) : text.split(',')
  const entries = parts.map((part) => part.trim()).filter((part) => part !== '')
  // `0, 0` alone is one corner, not two
  return !byLine && entries.every((entry) => !/\s/.test(entry)) && entries.length > 0
    ? [text.trim()]
    : entries
}

function readPlace(entry: string): Result<Place, Wrong> {
  const halves = entry.split(',')
  if (halves.length === 2) return bothOf(halves[0] ?? '', halves[1] ?? '')
  if (halves.length > 2)
    return fail({ message: 'this has more than x and y', fix: `put a semicolon between corners: ${SAMPLE}` })
  return apart(entry)
}

/** Two lengths with a blank between: the one way to part them, where there is just one. */
function apart(entry: string): Result<Place, Wrong> {
  const words = entry.split(/\s+/)
  const ways = words.slice(1).flatMap((_, i) => {
    const read = bothOf(words.slice(0, i + 1).join(' '), words.slice(i + 1).join(' '))
    return read.ok ? [read] : []
  })
  const [first] = ways
  if (first !== undefined && ways.length === 1) return first
  return fail({
    message: ways.length > 1 ? 'it is not clear where x ends and y begins' : 'this is not an x and a y',
    fix: `write x, y with a comma between and a semicolon after: ${SAMPLE}`,
  })
}

function bothOf(along: string, away: string): Result<Place, Wrong> {
  const x = parseLength(along)
  if (!x.ok) return fail({ message: `x: ${x.error.message}`, fix: x.error.fix })
  const y = parseLength(away)
  if (!y.ok) return fail({ message: `y: ${y.error.message}`, fix: y.error.fix })
  return ok({ x: x.value, y: y.value })
}
