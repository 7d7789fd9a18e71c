import { stagesOf } from '../../core/costing/index.ts'
import {
  clearField,
  type EntryKinds,
  type HoursWorked,
  type JobStatement,
  type KeptLine,
  type LineState,
  type Purchase,
  readEntries,
  setField,
  statedEntries,
  statedValue,
} from '../../core/job/index.ts'
import { fail, ok, printUnitPrice, type Result } from '../../core/units/index.ts'
import { faultSentence } from './field-value.ts'
import { printThousandths } from './print.ts'

/** The lists of what a job took: where they stand in it, and of what kind they are. */
export const ENTRY_LISTS = {
  bought: { path: 'costing.bought', kind: 'purchases' },
  worked: { path: 'costing.worked', kind: 'hours' },
  lines: { path: 'costing.lines', kind: 'line states' },
} as const

export type EntryList = keyof typeof ENTRY_LISTS
export type EntryOf<L extends EntryList> = EntryKinds[(typeof ENTRY_LISTS)[L]['kind']]

/** What is typed for an entry, by the name of its part. */
export type EntryDraft = { readonly [part: string]: string }

/** Entries that a statement states; null where they cannot be read, which is told at its fields. */
export function entriesOf<L extends EntryList>(
  statement: JobStatement,
  list: L,
): readonly EntryOf<L>[] | null {
  const { path, kind } = ENTRY_LISTS[list]
  const stated = statedValue(statement, path)
  if (stated === undefined) return []
  const read = readEntries(kind, path, stated)
  return read.ok ? (read.value as readonly EntryOf<L>[]) : null
}

/** The statement with other entries in a list; an empty list goes. */
export function withEntries<L extends EntryList>(
  statement: JobStatement,
  list: L,
  entries: readonly EntryOf<L>[],
): JobStatement {
  const { path, kind } = ENTRY_LISTS[list]
  if (entries.length === 0) return clearField(statement, path)
  return setField(statement, path, statedEntries(kind, entries))
}

/** A line of the estimate that something can be written down for, and what the estimate has for it. */
export interface NamedLine {
  readonly line: string
  readonly what: string
  readonly hint: string
}

/** What can be bought and what can be worked on, all work of a stage at the end. */
export function namedLines(lines: readonly KeptLine[]): {
  readonly goods: readonly NamedLine[]
  readonly works: readonly NamedLine[]
} {
  const named = (line: KeptLine): NamedLine => ({ line: line.line, what: line.what, hint: lineHint(line) })
  return {
    goods: lines.filter(({ part }) => part !== 'labour').map(named),
    works: [
      ...lines.filter(({ part }) => part === 'labour').map(named),
      ...stagesOf(lines).map(({ line, what }) => ({ line, what, hint: 'shared by its tasks as estimated' })),
    ],
  }
}

function lineHint({ part, thousandths, unit, hours, price }: KeptLine): string {
  return part === 'labour'
    ? `${printThousandths(hours)} worker hours estimated`
    : `${printThousandths(thousandths)} ${unit} at ${printUnitPrice(price)}`
}

/** What is said of a line, one thing changed; what says nothing is left out. */
export function withLineState(
  states: readonly LineState[],
  line: string,
  change: Partial<Omit<LineState, 'line'>>,
): readonly LineState[] {
  const before = states.find((one) => one.line === line) ?? { line, unusable: 0, left: 0, done: false }
  const after = { ...before, ...change }
  const says = after.done || after.unusable > 0 || after.left > 0
  return [...states.filter((one) => one.line !== line), ...(says ? [after] : [])]
}

/** The part of an entry that is wrong, and one sentence about it. */
export interface EntryFault {
  readonly part: string
  readonly sentence: string
}

/**
 * Reads what is typed for a purchase or for hours. Words that are those of a line of the estimate mean that line; any
 * other are what they say.
 */
export function readDraft<L extends 'bought' | 'worked'>(
  list: L,
  draft: EntryDraft,
  lines: readonly Pick<NamedLine, 'line' | 'what'>[],
): Result<EntryOf<L>, EntryFault> {
  const { kind } = ENTRY_LISTS[list]
  const { what = '', ...parts } = draft
  const line = lines.find((one) => one.what === what.trim())
  const named = line === undefined ? { what: what.trim() } : { line: line.line }
  const stated = Object.entries(parts).flatMap(([part, text]) =>
    text.trim() === '' ? [] : [[part, text.trim()] as const],
  )
  const read = readEntries(kind, 'entry', [{ ...Object.fromEntries(stated), ...named }])
  if (read.ok) {
    const [entry] = read.value
    if (entry !== undefined) return ok(entry as EntryOf<L>)
  }
  const [fault] = read.ok ? [] : read.error
  const told = fault ?? { path: '', message: 'this cannot be read', fix: '' }
  const part = told.path.split('.').at(2)
  // what is missing is told of the entry as a whole
  const missing = /^this entry has no (\w+)$/.exec(told.message)?.[1]
  return fail(
    missing === undefined
      ? { part: part ?? 'what', sentence: faultSentence(told) }
      : { part: missing, sentence: MISSING[missing] ?? faultSentence(told) },
  )
}

const MISSING: { readonly [part: string]: string } = {
  amount: 'What was paid is missing: write a sum such as $62.40, with a minus for what came back.',
  hours: 'The hours are missing: write worker hours such as 6.5.',
}

/** A purchase or hours as they are typed, to be changed. */
export function draftOf(
  entry: Purchase | HoursWorked,
  lines: readonly Pick<NamedLine, 'line' | 'what'>[],
): EntryDraft {
  const { date, line, what, thousandths } = entry
  const words = lines.find((one) => one.line === line)?.what ?? ''
  const count = thousandths === null ? '' : `${thousandths / 1000}`
  const shared = { date, what: what === '' ? words || line : what }
  return 'amount' in entry
    ? {
        ...shared,
        quantity: count,
        amount: `${entry.amount / 100}`,
        supplier: entry.supplier,
        receipt: entry.receipt,
      }
    : { ...shared, hours: count, who: entry.who }
}
