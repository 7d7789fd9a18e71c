import { fail, ok, type Result } from '../units/index.ts'
import type { EntryKind, EntryKinds } from './costing-entries.ts'
import {
  day,
  each,
  factor,
  flag,
  part,
  quantity,
  signedQuantity,
  sum,
  type Wrong,
  whole,
  words,
} from './entry-parts.ts'
import { excerpt, isObject, kindOf } from './json-shape.ts'
import { nearestName } from './nearest-name.ts'
import type { Fault, FieldPath, JsonValue } from './types.ts'

/** One part of an entry as a file names it: how it is read, and what it is where nothing is stated. */
interface Column<T> {
  readonly key: string
  readonly read: (stated: JsonValue) => Result<T, Wrong>
  /** undefined: it has to be stated */
  readonly otherwise?: T
}

type Columns<E> = { readonly [key in keyof E]-?: Column<E[key]> }

interface Shape<E> {
  readonly columns: Columns<E>
  readonly sample: string
  readonly most: number
  /** what is wrong with an entry whose parts are each right; null for nothing */
  readonly wrong?: (entry: E) => Wrong | null
}

const LONG = 200
/** Whole work of a crew for a year, in 1/1000 hour, is less. */
const MOST_HOURS = 20_000_000

const line = { key: 'line', read: words(LONG), otherwise: '' }
const what = { key: 'what', read: words(LONG), otherwise: '' }
const date = { key: 'date', read: day, otherwise: '' }

/** Of what kinds the lists of a job's costing are. */
const SHAPES: { readonly [kind in EntryKind]: Shape<EntryKinds[kind]> } = {
  purchases: {
    columns: {
      date,
      supplier: { key: 'supplier', read: words(LONG), otherwise: '' },
      line,
      what,
      thousandths: { key: 'quantity', read: signedQuantity, otherwise: null },
      amount: { key: 'amount', read: sum },
      receipt: { key: 'receipt', read: words(LONG), otherwise: '' },
    },
    sample: '{ "date": "2026-04-02", "what": "Post bases", "quantity": 4, "amount": "$62.40" }',
    most: 2000,
    wrong: namesNothing('what was bought'),
  },
  hours: {
    columns: {
      date,
      line,
      what,
      who: { key: 'who', read: words(LONG), otherwise: '' },
      thousandths: { key: 'hours', read: quantity },
    },
    sample: '{ "date": "2026-04-03", "line": "labour-task-joist", "hours": 6.5 }',
    most: 2000,
    wrong: (entry) =>
      namesNothing('the work')(entry) ??
      (entry.thousandths > MOST_HOURS
        ? { message: `${entry.thousandths / 1000} hours is too many`, fix: 'give 20,000 at most' }
        : null),
  },
  'line states': {
    columns: {
      line: { key: 'line', read: words(LONG) },
      unusable: { key: 'unusable', read: whole, otherwise: 0 },
      left: { key: 'left', read: whole, otherwise: 0 },
      done: { key: 'done', read: flag, otherwise: false },
    },
    sample: '{ "line": "lumber-30210-16", "unusable": 1, "left": 2, "done": true }',
    most: 1000,
  },
  'kept lines': {
    columns: {
      line: { key: 'line', read: words(LONG) },
      group: { key: 'group', read: words(40), otherwise: 'other' },
      what: { key: 'what', read: words(LONG) },
      part: { key: 'part', read: part },
      thousandths: { key: 'quantity', read: quantity },
      unit: { key: 'unit', read: words(40), otherwise: '' },
      price: { key: 'price', read: each },
      hours: { key: 'hours', read: quantity, otherwise: 0 },
      stage: { key: 'stage', read: words(40), otherwise: '' },
      rate: { key: 'rate', read: words(LONG), otherwise: '' },
      count: { key: 'count', read: quantity, otherwise: 0 },
      of: { key: 'of', read: words(40), otherwise: '' },
      factor: { key: 'factor', read: factor, otherwise: 10_000 },
    },
    sample:
      '{ "line": "other-permit", "what": "Permit", "part": "other", "quantity": 1, "unit": "sum", "price": "$350" }',
    most: 1000,
  },
}

/** Reads a list of entries; all faults, each with the path of its part (`costing.bought.0.amount`). */
export function readEntries<K extends EntryKind>(
  kind: K,
  path: FieldPath,
  stated: JsonValue,
): Result<readonly EntryKinds[K][], readonly Fault[]> {
  const shape: Shape<EntryKinds[K]> = SHAPES[kind]
  if (!Array.isArray(stated))
    return fail([
      { path, message: `this is ${kindOf(stated)}`, fix: `give a list of entries such as [${shape.sample}]` },
    ])
  if (stated.length > shape.most)
    return fail([{ path, message: `there are ${stated.length} entries`, fix: `give at most ${shape.most}` }])
  const faults: Fault[] = []
  const entries = (stated as readonly JsonValue[]).flatMap((one, index) => {
    const read = readEntry(shape, `${path}.${index}`, one)
    if (read.ok) return [read.value]
    faults.push(...read.error)
    return []
  })
  return faults.length > 0 ? fail(faults) : ok(entries)
}

/** Entries as a job file holds them; what is as it would be without being stated is left out. */
export function statedEntries<K extends EntryKind>(kind: K, entries: readonly EntryKinds[K][]): JsonValue {
  const columns = Object.entries(SHAPES[kind].columns) as readonly [keyof EntryKinds[K], Column<unknown>][]
  return entries.map((entry) =>
    Object.fromEntries(
      columns.flatMap(([name, { key, otherwise }]): readonly [string, JsonValue][] => {
        const value = entry[name] as string | number | boolean | null
        return value === otherwise ? [] : [[key, stateOf(key, value)]]
      }),
    ),
  )
}

function stateOf(key: string, value: string | number | boolean | null): JsonValue {
  if (typeof value !== 'number') return value
  if (key === 'amount') return value / 100
  if (key === 'price' || key === 'factor') return value / 10_000
  return key === 'unusable' || key === 'left' ? value : value / 1000
}

function readEntry<E>(shape: Shape<E>, path: FieldPath, stated: JsonValue): Result<E, readonly Fault[]> {
  const fix = `write it as ${shape.sample}`
  if (!isObject(stated)) return fail([{ path, message: `this entry is ${kindOf(stated)}`, fix }])
  const columns = Object.entries(shape.columns) as readonly [string, Column<unknown>][]
  const names = columns.map(([, { key }]) => key)
  const faults: Fault[] = Object.keys(stated)
    .filter((key) => !names.includes(key))
    .map((key) => {
      const near = nearestName(key, names)
      return {
        path: `${path}.${key}`,
        message: `an entry has no "${excerpt(key)}"`,
        fix: near === null ? fix : `the nearest known name is "${near}"`,
      }
    })
  const read: { [name: string]: unknown } = {}
  for (const [name, column] of columns) {
    const { key, otherwise } = column
    if (!Object.hasOwn(stated, key)) {
      if (otherwise === undefined)
        faults.push({ path, message: `this entry has no ${key}`, fix: `write it as ${shape.sample}` })
      else read[name] = otherwise
      continue
    }
    const value = column.read(stated[key] ?? null)
    if (value.ok) read[name] = value.value
    else faults.push({ path: `${path}.${key}`, ...value.error })
  }
  if (faults.length > 0) return fail(faults)
  const entry = read as E
  const wrong = shape.wrong?.(entry) ?? null
  return wrong === null ? ok(entry) : fail([{ path, ...wrong }])
}

function namesNothing(thing: string) {
  return (entry: { readonly line: string; readonly what: string }): Wrong | null =>
    entry.line.trim() === '' && entry.what.trim() === ''
      ? {
          message: `this entry does not say ${thing}`,
          fix: 'give "what" in words, or "line", a line of the estimate',
        }
      : null
}
