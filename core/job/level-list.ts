import { fail, feet, ok, parseLength, printLength, type Result, type Ticks } from '../units/index.ts'
import { type Place, readCorners } from './corner-list.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** A further platform beside the deck: the top of its decking above the datum, and its corners. */
export interface StatedLevel {
  readonly height: Ticks
  readonly corners: readonly Place[]
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const SAMPLE = "21 in: 0, 14'; 12', 14'; 12', 20'; 0, 20'"

/** The deck and two levels beside it: what more would be is several decks. */
const MOST_LEVELS = 2

/** As a deck's own height: lower, no post fits; higher, the deck tables of the code end. */
const LEAST_HEIGHT = feet(1)
const MOST_HEIGHT = feet(14)

/** Reads levels as typed, `height: corners`, with | or lines between them. The first fault is told. */
export function readLevels(text: string): Result<readonly StatedLevel[], Wrong> {
  const entries = text
    .split(/[|\n]/)
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '')
  if (entries.length > MOST_LEVELS)
    return fail({
      message: `there are ${entries.length} levels beside the deck`,
      fix: `give at most ${MOST_LEVELS}`,
    })
  const levels: StatedLevel[] = []
  for (const [i, entry] of entries.entries()) {
    const level = readLevel(entry)
    if (!level.ok) {
      const { message, fix } = level.error
      return fail({ message: `level ${i + 2}: ${message}`, fix })
    }
    levels.push(level.value)
  }
  return ok(levels)
}

/** Levels that were read with their job. Throws on any other text: that is a bug, not input. */
export function levelList(text: string): readonly StatedLevel[] {
  const read = readLevels(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

function readLevel(entry: string): Result<StatedLevel, Wrong> {
  const [stated = '', ...rest] = entry.split(':')
  if (rest.length !== 1)
    return fail({ message: `"${excerpt(entry)}" has no height and corners`, fix: `write it as ${SAMPLE}` })
  const height = parseLength(stated)
  if (!height.ok) return fail({ message: `its height: ${height.error.message}`, fix: height.error.fix })
  if (height.value < LEAST_HEIGHT || height.value > MOST_HEIGHT) {
    return fail({
      message: `its height is ${printLength(height.value)}`,
      fix: `give a height from ${printLength(LEAST_HEIGHT)} to ${printLength(MOST_HEIGHT)}`,
    })
  }
  const corners = readCorners(rest[0] ?? '')
  if (!corners.ok) return corners
  return corners.value.length === 0
    ? fail({ message: 'it has no corners', fix: `write it as ${SAMPLE}` })
    : ok({ height: height.value, corners: corners.value })
}
