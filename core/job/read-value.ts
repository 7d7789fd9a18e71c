import {
  fail,
  lengthFromInches,
  ok,
  parseLength,
  parseMoney,
  parseShare,
  type Result,
  TICKS_PER_FOOT,
} from '../units/index.ts'
import { readCorners } from './corner-list.ts'
import { readDeckParts } from './deck-part-list.ts'
import { readEdges } from './edge-list.ts'
import { day } from './entry-parts.ts'
import type { FieldValue } from './field-value.ts'
import { readSettled } from './found-list.ts'
import { excerpt, kindOf } from './json-shape.ts'
import { readEdgeLengths, readLengths, readMiddleBeams } from './length-list.ts'
import { readLevels } from './level-list.ts'
import { readStatedLines } from './line-list.ts'
import { readOptions } from './option-list.ts'
import { readPostList } from './post-list.ts'
import { printAmount, printBounds } from './print-field.ts'
import { readEntries } from './read-entries.ts'
import { readSpots } from './read-spots.ts'
import { readRectangles, readZones } from './rectangle-list.ts'
import { readRunNames } from './run-names.ts'
import { readStockCounts, readStockLengths } from './stock-lists.ts'
import type { Fault, FieldSpec, JsonValue } from './types.ts'

/**
 * Reads one stated value by its field. Numbers are inches, dollars, percent, psf or a count; text is read as a
 * person types it. Every fault names the field by its path.
 */
export function readValue(field: FieldSpec, stated: JsonValue): Result<FieldValue, readonly Fault[]> {
  if (field.kind === 'ground') return readSpots(field.path, stated)
  if (field.entries !== undefined) return readEntries(field.entries, field.path, stated)
  const read = readByKind(field, stated)
  if (!read.ok) return fail([{ path: field.path, ...read.error }])
  const list = field.lists === undefined ? null : LIST_READERS[field.lists](String(read.value))
  if (list?.ok === false) return fail([{ path: field.path, ...list.error }])
  const outside = outsideBounds(field, read.value, stated)
  return outside === null ? read : fail([{ path: field.path, ...outside }])
}

type Wrong = Pick<Fault, 'message' | 'fix'>

const LIST_READERS: {
  readonly [kind in NonNullable<FieldSpec['lists']>]: (text: string) => Result<readonly unknown[], Wrong>
} = {
  posts: readPostList,
  'settled holes': readSettled,
  corners: readCorners,
  edges: readEdges,
  zones: readZones,
  rectangles: readRectangles,
  lengths: readLengths,
  'middle beams': readMiddleBeams,
  'edge lengths': readEdgeLengths,
  levels: readLevels,
  'decked parts': readDeckParts,
  options: readOptions,
  runs: readRunNames,
  'stock lengths': readStockLengths,
  'stock counts': readStockCounts,
  'stated lines': readStatedLines,
  'a day': (text) => {
    const read = day(text)
    return read.ok ? ok([read.value]) : read
  },
}

function readByKind(field: FieldSpec, stated: JsonValue): Result<string | number | boolean, Wrong> {
  if (stated === null) {
    return fail({
      message: `${field.label} is null`,
      fix: 'give a value, or leave the field out to take its default',
    })
  }
  switch (field.kind) {
    case 'text':
      return typeof stated === 'string' ? ok(stated) : fail(wrongKind(field, stated, 'text in quotes'))
    case 'choice':
      return readChoice(field, stated)
    case 'flag':
      return typeof stated === 'boolean'
        ? ok(stated)
        : fail(wrongKind(field, stated, 'true or false, without quotes'))
    case 'length':
      if (typeof stated === 'number') return because(field, stated, lengthFromInches(stated))
      if (typeof stated === 'string') return because(field, stated, parseLength(stated))
      return fail(wrongKind(field, stated, 'a length such as "12\'-6 1/2\\"", or a number of inches'))
    case 'money':
      if (typeof stated === 'number') return because(field, stated, parseMoney(plain(stated)))
      if (typeof stated === 'string') return because(field, stated, parseMoney(stated))
      return fail(wrongKind(field, stated, 'a sum such as "$450", or a number of dollars'))
    case 'share':
      if (typeof stated === 'number') return because(field, stated, parseShare(plain(stated)))
      if (typeof stated === 'string') return because(field, stated, parseShare(stated))
      return fail(wrongKind(field, stated, 'a share such as "30 %", or a number of percent'))
    case 'count':
    case 'psf':
      return readCount(field, stated)
    case 'ground':
    case 'entries':
      throw new Error('lists are read by their own readers')
  }
}

/** A number of JSON as a decimal numeral where it has one; others keep their exponent and are refused by the parser. */
function plain(n: number): string {
  return `${n}`
}

function readChoice(field: FieldSpec, stated: JsonValue): Result<string, Wrong> {
  const choices = field.choices ?? []
  const fix = `write ${choices.map((choice) => `"${choice}"`).join(' or ')}`
  if (typeof stated !== 'string') return fail(wrongKind(field, stated, fix.slice('write '.length)))
  if (choices.includes(stated)) return ok(stated)
  return fail({ message: `${field.label} cannot be "${excerpt(stated)}"`, fix })
}

function readCount(field: FieldSpec, stated: JsonValue): Result<number, Wrong> {
  const unit = field.kind === 'psf' ? ' psf' : ''
  const sample = `a whole number, ${printBounds(field)}`
  if (typeof stated === 'number') {
    return Number.isInteger(stated)
      ? ok(stated)
      : fail({ message: `${field.label} is ${stated}${unit}`, fix: `give ${sample}` })
  }
  if (typeof stated !== 'string') return fail(wrongKind(field, stated, sample))
  const parts = /^\s*(\d{1,3}(?:,\d{3})+|\d{1,9})\s*(\p{L}*)\s*$/u.exec(stated)
  const wordFits = parts?.[2] === '' || (field.kind === 'psf' && parts?.[2]?.toLowerCase() === 'psf')
  if (parts !== null && wordFits) return ok(Number((parts[1] ?? '').replaceAll(',', '')))
  return fail({ message: `${field.label} cannot be "${excerpt(stated)}"`, fix: `give ${sample}` })
}

function because<T>(field: FieldSpec, stated: string | number, read: Result<T, Wrong>): Result<T, Wrong> {
  if (read.ok) return read
  const shown = typeof stated === 'string' ? `"${excerpt(stated)}"` : `${stated}`
  return fail({
    message: `${field.label} is given as ${shown}: ${read.error.message}`,
    fix: field.min === undefined ? read.error.fix : `${read.error.fix}; it may go ${printBounds(field)}`,
  })
}

function wrongKind(field: FieldSpec, stated: JsonValue, right: string): Wrong {
  return { message: `${field.label} is ${kindOf(stated)}`, fix: `give ${right}` }
}

function outsideBounds(field: FieldSpec, value: FieldValue, stated: JsonValue): Wrong | null {
  const { min, max } = field
  if (typeof value === 'string') {
    const fix = `use ${min === undefined || min === 0 ? `at most ${max}` : `${min} to ${max}`} characters`
    if (max !== undefined && value.length > max)
      return { message: `${field.label} has ${value.length} characters`, fix }
    if (min !== undefined && value.trim().length < min) return { message: `${field.label} is empty`, fix }
    return null
  }
  if (typeof value !== 'number') return null
  const reason = field.boundsReason === undefined ? '' : `: ${field.boundsReason}`
  const fix = `give a value ${printBounds(field)}${reason}`
  if (min !== undefined && value < min) {
    return {
      message: `${field.label} is ${shownAmount(field, value)}, less than ${printAmount(field, min)}`,
      fix: `${fix}${perhapsFeet(field, stated)}`,
    }
  }
  if (max !== undefined && value > max) {
    return {
      message: `${field.label} is ${shownAmount(field, value)}, more than ${printAmount(field, max)}`,
      fix,
    }
  }
  return null
}

/** A bare number is inches; whoever gives a deck's size as one that is right in feet means feet. */
function perhapsFeet({ section, min = 0 }: FieldSpec, stated: JsonValue): string {
  const bare = /^\s*(\d{1,2}(?:\.\d+)?)\s*$/.exec(`${stated}`)?.[1]
  return bare === undefined || section !== 'size' || Number(bare) * TICKS_PER_FOOT < min
    ? ''
    : `; a bare number is inches: for feet write "${bare} ft"`
}

/** A count or load beyond every bound is printed as it stands. */
function shownAmount(field: FieldSpec, value: number): string {
  return printAmount(field, value)
}
