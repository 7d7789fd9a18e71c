import { fail, ok, parseLength, type Result, type Ticks } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** A rectangle on the plan: its corner nearest the deck's left end at the wall, its extent along and away. */
export interface Rectangle {
  readonly x: Ticks
  readonly y: Ticks
  readonly width: Ticks
  readonly depth: Ticks
}

export type JoistDirection = 'away' | 'along'

/** A part of the deck with joists of its own direction. */
export interface StatedZone extends Rectangle {
  readonly joists: JoistDirection
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const NAMES = ['x', 'y', 'width', 'depth'] as const
const SAMPLE = "8', 3', 4', 3' 6\""
const MOST = 20

/** Reads rectangles as typed, `x, y, width, depth` with semicolons or lines between them. The first fault is told. */
export function readRectangles(text: string): Result<readonly Rectangle[], Wrong> {
  return readEach(text, (entry) => readRectangle(entry, SAMPLE))
}

/** Reads zones as typed, `x, y, width, depth: along` with semicolons or lines between them. */
export function readZones(text: string): Result<readonly StatedZone[], Wrong> {
  const sample = `${SAMPLE}: along`
  return readEach(text, (entry) => {
    const [place = '', ...words] = entry.split(':')
    const joists = words.join(':').trim().toLowerCase()
    if (joists !== 'along' && joists !== 'away') {
      return fail({
        message: 'it does not say how its joists run',
        fix: `write "along" or "away" last: ${sample}`,
      })
    }
    const read = readRectangle(place, sample)
    return read.ok ? ok({ ...read.value, joists }) : read
  })
}

/** Rectangles that were read with their job. Throws on any other text: that is a bug, not input. */
export function rectangleList(text: string): readonly Rectangle[] {
  return asRead(readRectangles(text))
}

/** Zones that were read with their job. Throws on any other text: that is a bug, not input. */
export function zoneList(text: string): readonly StatedZone[] {
  return asRead(readZones(text))
}

function asRead<Value>(read: Result<Value, Wrong>): Value {
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

function readEach<Value>(
  text: string,
  readOne: (entry: string) => Result<Value, Wrong>,
): Result<readonly Value[], Wrong> {
  const entries = text
    .split(/[;\n]/)
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '')
  if (entries.length > MOST)
    return fail({ message: `there are ${entries.length}`, fix: `give at most ${MOST}` })
  const read: Value[] = []
  for (const [i, entry] of entries.entries()) {
    const one = readOne(entry)
    if (!one.ok)
      return fail({
        message: `number ${i + 1}, "${excerpt(entry)}": ${one.error.message}`,
        fix: one.error.fix,
      })
    read.push(one.value)
  }
  return ok(read)
}

function readRectangle(entry: string, sample: string): Result<Rectangle, Wrong> {
  const parts = entry.split(',')
  if (parts.length !== NAMES.length)
    return fail({ message: 'this is not x, y, width and depth', fix: `write it as ${sample}` })
  const lengths: Ticks[] = []
  for (const [i, name] of NAMES.entries()) {
    const read = parseLength(parts[i] ?? '')
    if (!read.ok) return fail({ message: `${name}: ${read.error.message}`, fix: read.error.fix })
    lengths.push(read.value)
  }
  const [x, y, width, depth] = lengths as [Ticks, Ticks, Ticks, Ticks]
  return width > 0 && depth > 0
    ? ok({ x, y, width, depth })
    : fail({ message: 'it has no area', fix: 'give a width and a depth over 0' })
}
