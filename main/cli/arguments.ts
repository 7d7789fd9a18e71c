import type { WidthRange } from '../../core/compare/index.ts'
import { MEANINGS, type Meaning, type SawSettings } from '../../core/cut-list/index.ts'
import {
  type FieldPath,
  FOUND_WAYS,
  type Found,
  type FoundWay,
  fieldAt,
  readFound,
  readValue,
  SIZED_FIELDS,
} from '../../core/job/index.ts'
import type { PageOptions, SheetId } from '../../core/papers/index.ts'
import { fail, inches, ok, parseLength, type Result, type Ticks, ticks } from '../../core/units/index.ts'
import type { PaperFormat } from '../app/paper-formats.ts'
import { type PaperOption, readPaperOptions } from './paper-arguments.ts'
import { type PriceListCommand, type PriceListOption, readPriceListOptions } from './price-list-arguments.ts'
import { suggestion } from './suggestion.ts'

/** What a command line asks for. */
export type Command =
  | {
      readonly kind: 'estimate'
      readonly job: string
      readonly prices: string | null
      readonly json: boolean
      /** say what each joint of the frame saves, which takes a plan without it */
      readonly joints: boolean
      readonly xlsx: string | null
    }
  | {
      readonly kind: 'compare'
      readonly job: string
      readonly prices: string | null
      readonly json: boolean
      readonly range: WidthRange
    }
  | {
      readonly kind: 'cut'
      readonly list: string
      readonly stock: string | null
      readonly saw: SawSettings
      /** what each column of the list holds, where its headings do not say */
      readonly columns: readonly Meaning[] | null
      readonly prices: string | null
      readonly json: boolean
      readonly csv: string | null
      readonly xlsx: string | null
    }
  | {
      readonly kind: 'rest'
      readonly job: string
      readonly day: string
      readonly prices: string | null
      readonly json: boolean
    }
  | {
      readonly kind: 'size'
      readonly job: string
      readonly prices: string | null
      readonly json: boolean
      /** fields that keep their values */
      readonly hold: readonly FieldPath[]
      /** file for the job sized so; null for none */
      readonly write: string | null
    }
  | {
      readonly kind: 'papers'
      readonly job: string
      readonly to: string
      readonly prices: string | null
      readonly firm: string | null
      readonly only: readonly SheetId[]
      readonly formats: readonly PaperFormat[]
      readonly page: PageOptions
      /** ISO date; null: none is stated */
      readonly date: string | null
      readonly revision: string | null
    }
  | {
      readonly kind: 'ground'
      readonly job: string
      readonly prices: string | null
      readonly json: boolean
      /** a hole that was found off its place */
      readonly found: Found | null
      /** what is done about it, and the file for the job made so */
      readonly choose: { readonly way: FoundWay; readonly write: string } | null
    }
  | PriceListCommand
  | { readonly kind: 'check'; readonly job: string; readonly json: boolean }
  | { readonly kind: 'new'; readonly file: string }
  | { readonly kind: 'help' }
  | { readonly kind: 'version' }

type Option =
  | 'prices'
  | 'xlsx'
  | 'width'
  | 'step'
  | 'json'
  | 'joints'
  | 'stock'
  | 'kerf'
  | 'trim'
  | 'columns'
  | 'csv'
  | 'day'
  | 'hold'
  | 'write'
  | 'found'
  | 'choose'
  | PaperOption
  | PriceListOption

const OPTIONS: { readonly [command: string]: readonly Option[] } = {
  estimate: ['prices', 'json', 'joints', 'xlsx'],
  compare: ['width', 'step', 'prices', 'json'],
  cut: ['stock', 'kerf', 'trim', 'columns', 'prices', 'json', 'csv', 'xlsx'],
  rest: ['day', 'prices', 'json'],
  size: ['hold', 'write', 'prices', 'json'],
  papers: ['to', 'only', 'paper', 'scale', 'units', 'as', 'date', 'revision', 'firm', 'prices'],
  ground: ['found', 'choose', 'write', 'prices', 'json'],
  prices: ['date', 'supplier', 'columns', 'known', 'beside', 'prices', 'write', 'json'],
  check: ['json'],
  new: [],
}

/** What the file of a command is called in its usage. */
const FILES: { readonly [command: string]: string } = { new: 'FILE', cut: 'LIST.csv', prices: 'LIST.csv' }

const SWITCHES: readonly Option[] = ['json', 'joints', 'known', 'beside']

/** Most widths that one comparison is asked for. */
const MOST_WIDTHS = 1000

/** Reads the words after the program's name; a fault is one sentence. */
export function readArguments(words: readonly string[]): Result<Command, string> {
  const [name = '', ...rest] = words
  if (name === '' || name === 'help' || words.includes('--help') || words.includes('-h'))
    return ok({ kind: 'help' })
  if (name === '--version') return ok({ kind: 'version' })
  const allowed = Object.hasOwn(OPTIONS, name) ? OPTIONS[name] : undefined
  if (allowed === undefined)
    return fail(`There is no command "${name}"${suggestion(name, Object.keys(OPTIONS))}`)
  const sorted = sortWords(rest, name, allowed)
  if (!sorted.ok) return sorted
  const { files, values } = sorted.value
  const [file] = files
  if (file === undefined)
    return fail(`"${name}" needs a file: kerfwright ${name} ${FILES[name] ?? 'JOB.json'}.`)
  if (files.length > 1)
    return fail(`"${name}" takes one file, and here are ${files.length}: ${files.join(', ')}.`)
  return commandOf(name, file, values)
}

function commandOf(name: string, file: string, values: ReadonlyMap<Option, string>): Result<Command, string> {
  const prices = values.get('prices') ?? null
  const json = values.has('json')
  switch (name) {
    case 'estimate':
      return ok({
        kind: 'estimate',
        job: file,
        prices,
        json,
        joints: values.has('joints'),
        xlsx: values.get('xlsx') ?? null,
      })
    case 'check':
      return ok({ kind: 'check', job: file, json })
    case 'rest': {
      const day = values.get('day')
      if (day === undefined)
        return fail('"rest" needs the day: --day DAY.json says what is sawn and what went otherwise.')
      return ok({ kind: 'rest', job: file, day, prices, json })
    }
    case 'size': {
      const hold = readHeld(values.get('hold'))
      return hold.ok
        ? ok({ kind: 'size', job: file, prices, json, hold: hold.value, write: values.get('write') ?? null })
        : hold
    }
    case 'ground':
      return readGround(file, values)
    case 'papers':
      return readPaperOptions(file, values)
    case 'prices':
      return readPriceListOptions(file, values)
    case 'new':
      return ok({ kind: 'new', file })
    case 'cut': {
      const saw = readSaw(values.get('kerf'), values.get('trim'))
      const columns = readColumns(values.get('columns'))
      if (!saw.ok) return saw
      if (!columns.ok) return columns
      const stock = values.get('stock') ?? null
      const csv = values.get('csv') ?? null
      const xlsx = values.get('xlsx') ?? null
      return ok({
        kind: 'cut',
        list: file,
        stock,
        saw: saw.value,
        columns: columns.value,
        prices,
        json,
        csv,
        xlsx,
      })
    }
    default: {
      const range = readRange(values.get('width'), values.get('step'))
      return range.ok ? ok({ kind: 'compare', job: file, prices, json, range: range.value }) : range
    }
  }
}

interface SortedWords {
  readonly files: readonly string[]
  readonly values: ReadonlyMap<Option, string>
}

function sortWords(
  words: readonly string[],
  command: string,
  allowed: readonly Option[],
): Result<SortedWords, string> {
  const files: string[] = []
  const values = new Map<Option, string>()
  let onlyFiles = false
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at] ?? ''
    if (onlyFiles || !word.startsWith('--')) {
      files.push(word)
      continue
    }
    if (word === '--') {
      onlyFiles = true
      continue
    }
    const [, key = '', , inline] = /^--([^=]*)(=(.*))?$/s.exec(word) ?? []
    const option = allowed.find((one) => one === key)
    if (option === undefined) {
      return fail(`"${command}" has no option --${key}${suggestion(key, allowed, '--')}`)
    }
    if (values.has(option)) return fail(`--${option} is given twice.`)
    if (SWITCHES.includes(option)) {
      if (inline !== undefined) return fail(`--${option} takes no value.`)
      values.set(option, '')
      continue
    }
    const value = inline ?? words[at + 1]
    if (value === undefined || value === '') return fail(`--${option} needs a value after it.`)
    if (inline === undefined) at += 1
    values.set(option, value)
  }
  return ok({ files, values })
}

function readRange(width: string | undefined, step: string | undefined): Result<WidthRange, string> {
  if (width === undefined) return fail('"compare" needs the widths: --width 18ft..26ft.')
  const ends = width.split('..')
  if (ends.length !== 2)
    return fail(`--width takes two lengths with .. between them, such as 18ft..26ft; this is ${width}.`)
  const from = readLength('--width', ends[0] ?? '')
  if (!from.ok) return from
  const to = readLength('--width', ends[1] ?? '')
  if (!to.ok) return to
  const by = step === undefined ? ok(inches(6)) : readLength('--step', step)
  if (!by.ok) return by
  if (from.value > to.value)
    return fail(`--width goes from the narrower to the wider; ${ends[0]} is wider than ${ends[1]}.`)
  if ((to.value - from.value) / by.value >= MOST_WIDTHS) {
    return fail(`--step makes more than ${MOST_WIDTHS} widths; give a larger one.`)
  }
  return ok({ from: from.value, to: to.value, step: by.value })
}

/** Kerf and end trim within the bounds, and with the defaults, that a job has for them. */
function readSaw(kerf: string | undefined, trim: string | undefined): Result<SawSettings, string> {
  const read = (option: string, path: string, text: string | undefined): Result<Ticks, string> => {
    const field = fieldAt(path)
    const value = readValue(field, text ?? field.default)
    if (value.ok) return ok(ticks(Number(value.value)))
    const [fault] = value.error
    return fail(`${option}: ${fault?.message}; ${fault?.fix}.`)
  }
  const cut = read('--kerf', 'cutting.kerf', kerf)
  if (!cut.ok) return cut
  const end = read('--trim', 'cutting.endTrim', trim)
  return end.ok ? ok({ kerf: cut.value, endTrim: end.value }) : end
}

function readColumns(text: string | undefined): Result<readonly Meaning[] | null, string> {
  if (text === undefined) return ok(null)
  const columns: Meaning[] = []
  for (const word of text.split(',').map((each) => each.trim())) {
    const meaning = MEANINGS.find((one) => one === word)
    if (meaning === undefined) return fail(`--columns: there is no "${word}"${suggestion(word, MEANINGS)}`)
    columns.push(meaning)
  }
  return ok(columns)
}

function readGround(job: string, values: ReadonlyMap<Option, string>): Result<Command, string> {
  const stated = values.get('found')
  const way = values.get('choose')
  const write = values.get('write')
  const found = stated === undefined ? ok(null) : readFound(stated)
  if (!found.ok) return fail(`--found: ${found.error.message}; ${found.error.fix}.`)
  const chosen = FOUND_WAYS.find((one) => one === way)
  if (way !== undefined && chosen === undefined)
    return fail(`--choose: there is no way "${way}"${suggestion(way, FOUND_WAYS)}`)
  if (chosen !== undefined && found.value === null)
    return fail('--choose needs --found, such as --found "3: 2 in right, 1 1/2 in out".')
  if ((chosen === undefined) !== (write === undefined))
    return fail('--choose and --write go together: the job with the chosen way is written to a new file.')
  return ok({
    kind: 'ground',
    job,
    prices: values.get('prices') ?? null,
    json: values.has('json'),
    found: found.value,
    choose: chosen === undefined || write === undefined ? null : { way: chosen, write },
  })
}

/** Fields that sizing is to leave alone, with commas between them. */
function readHeld(text: string | undefined): Result<readonly FieldPath[], string> {
  if (text === undefined) return ok([])
  const held = text.split(',').map((each) => each.trim())
  const unknown = held.find((path) => !SIZED_FIELDS.has(path))
  if (unknown === undefined) return ok(held)
  return fail(`--hold: "${unknown}" is no field that is sized${suggestion(unknown, [...SIZED_FIELDS])}`)
}

function readLength(option: string, text: string): Result<Ticks, string> {
  const read = parseLength(text)
  if (!read.ok) return fail(`${option}: "${text}": ${read.error.message}; ${read.error.fix}.`)
  if (read.value <= 0) return fail(`${option}: "${text}" is not longer than nothing.`)
  return read
}
