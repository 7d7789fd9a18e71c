import { fail, ok, parseLength, printLength, type Result, type Ticks, ticks } from '../units/index.ts'
import { excerpt } from './json-shape.ts'
import type { Fault } from './types.ts'

/** What can be done about a hole or pier that is not where the plan has it. */
export const FOUND_WAYS = [
  'keep',
  'move along the beam',
  'drill the anchor anew',
  'shift the base',
  'dig again',
] as const
export type FoundWay = (typeof FOUND_WAYS)[number]

/** A hole or pier that is not where the plan has it. */
export interface Found {
  /** number of the post on the plan */
  readonly post: number
  /** to the right of its place, and away from the house; left and towards the house are minus */
  readonly dx: Ticks
  readonly dy: Ticks
  /** its place is barred by rock or a pipe: nothing can be dug nearer to it */
  readonly barred: boolean
}

/** The same, and what was done about it. */
export interface Settled extends Found {
  readonly way: FoundWay
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const SAMPLE = '3: 2 in right, 1 1/2 in out'
const DIRECTIONS: { readonly [word: string]: readonly ['dx' | 'dy', 1 | -1] } = {
  right: ['dx', 1],
  left: ['dx', -1],
  out: ['dy', 1],
  away: ['dy', 1],
  back: ['dy', -1],
  'towards the house': ['dy', -1],
}

/** Reads where a hole was found, as typed: `3: 2 in right, 1 1/2 in out`, and `rock` or `pipe` where it bars the place. */
export function readFound(text: string): Result<Found, Wrong> {
  const entry = readEntry(text.trim())
  if (!entry.ok) return entry
  const { way, ...found } = entry.value
  if (way !== null) return fail({ message: `"${excerpt(way)}" is no place`, fix: `write it as ${SAMPLE}` })
  if (found.dx !== 0 || found.dy !== 0) return ok(found)
  return fail({
    message: found.barred
      ? `where else hole ${found.post} was dug, or can be, is not said`
      : `hole ${found.post} is where the plan has it`,
    fix: `say how far off it is, such as ${SAMPLE}`,
  })
}

/**
 * Reads what was done about holes, as typed: `3: shift the base, 2 in right, 1 1/2 in out`, semicolons or lines between
 * them. One hole may be there more than once. The first fault is told; an empty text is an empty list.
 */
export function readSettled(text: string): Result<readonly Settled[], Wrong> {
  const read: Settled[] = []
  for (const written of text.split(/[;\n]/).map((entry) => entry.trim())) {
    if (written === '') continue
    const entry = readEntry(written)
    if (!entry.ok) return entry
    const { way, ...found } = entry.value
    if (way === null)
      return fail({
        message: `what was done about hole ${found.post} is not said`,
        fix: `begin with ${FOUND_WAYS.join(', ')}, such as 3: shift the base, 2 in right`,
      })
    read.push({ ...found, way })
  }
  return ok(read)
}

/** A list that was read with its job. Throws on any other text: that is a bug, not input. */
export function settledList(text: string): readonly Settled[] {
  const read = readSettled(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}

/** As it is read again: `3: shift the base, 2 in right, 1 1/2 in out`. */
export function printSettled({ post, way, ...found }: Settled): string {
  return `${post}: ${[way, ...placeWords(found)].join(', ')}`
}

/** How far off and where to, and what bars the place, in words that are read again. */
export function placeWords({ dx, dy, barred }: Pick<Found, 'dx' | 'dy' | 'barred'>): readonly string[] {
  const words = (length: Ticks, plus: string, minus: string) =>
    length === 0 ? [] : [`${printLength(ticks(Math.abs(length)))} ${length > 0 ? plus : minus}`]
  return [...words(dx, 'right', 'left'), ...words(dy, 'out', 'back'), ...(barred ? ['rock'] : [])]
}

function readEntry(text: string): Result<Found & { readonly way: FoundWay | null }, Wrong> {
  const [, number = '', rest = ''] = /^(?:hole\s*|post\s*|p)?(\d{1,3})\s*[:=]\s*(.*)$/i.exec(text) ?? []
  if (number === '')
    return fail({ message: `"${excerpt(text)}" names no hole`, fix: `write it as ${SAMPLE}` })
  const off = { dx: ticks(0), dy: ticks(0) }
  let barred = false
  let way: FoundWay | null = null
  for (const part of rest.split(',').map((one) => one.trim().toLowerCase())) {
    if (part === '') continue
    if (part === 'rock' || part === 'pipe' || part === 'barred') {
      barred = true
      continue
    }
    const named: FoundWay | undefined = FOUND_WAYS.find((one) => one === part)
    if (named !== undefined && way === null) {
      way = named
      continue
    }
    const read = readOffset(part)
    if (!read.ok) return fail({ ...read.error, message: `hole ${number}: ${read.error.message}` })
    const { axis, length } = read.value
    if (off[axis] !== 0)
      return fail({
        message: `hole ${number} is off twice ${axis === 'dx' ? 'along the house' : 'away from it'}`,
        fix: 'give one distance for each',
      })
    off[axis] = length
  }
  return ok({ post: Number(number), ...off, barred, way })
}

function readOffset(part: string): Result<{ readonly axis: 'dx' | 'dy'; readonly length: Ticks }, Wrong> {
  const [, stated = '', word = ''] =
    /^(.*\S)\s+(right|left|out|away|back|towards the house)$/.exec(part) ?? []
  const direction = DIRECTIONS[word]
  if (direction === undefined || stated === '')
    return fail({
      message: `"${excerpt(part)}" says no distance and direction`,
      fix: `write it as ${SAMPLE}`,
    })
  const length = parseLength(stated)
  if (!length.ok)
    return fail({ message: `"${excerpt(stated)}": ${length.error.message}`, fix: length.error.fix })
  const [axis, sign] = direction
  return ok({ axis, length: ticks(sign * length.value) })
}
