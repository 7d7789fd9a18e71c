import {
  clearField,
  defaultOf,
  excerpt,
  FIELDS,
  FIELDS_WITHOUT_PRICE,
  type FieldSpec,
  type JobStatement,
  type JsonValue,
  printFieldValue,
  readValue,
  setField,
  statedValue,
} from '../../job/index.ts'

/** One step from one state of a job to another: what it changes, and the statement after it. */
export interface ChangeStep {
  readonly what: string
  readonly statement: JobStatement
}

/** Beyond so many lines nobody reads a change order; each step is an estimate of its own. */
const MOST = 12
/** Sections whose fields are nobody's business but the firm's: their changes stand together, without their figures. */
const INTERNAL: ReadonlySet<FieldSpec['section']> = new Set(['pricing', 'cutting', 'code', 'job', 'work'])
/** Fields that change no price. */
const SILENT: ReadonlySet<string> = new Set([...FIELDS_WITHOUT_PRICE, 'pricing.options', 'pricing.book'])

/** The fields in which two statements differ, one after the other; the last step is the second statement itself. */
export function changeSteps(before: JobStatement, after: JobStatement): readonly ChangeStep[] {
  const changed = FIELDS.filter(
    ({ path }) => !SILENT.has(path) && !same(statedValue(before, path), statedValue(after, path)),
  )
  const open = changed.filter(({ section }) => !INTERNAL.has(section))
  const told = open.slice(0, open.length > MOST ? MOST - 1 : MOST)
  let statement = before
  const steps = told.map((field): ChangeStep => {
    const value = statedValue(after, field.path)
    statement =
      value === undefined ? clearField(statement, field.path) : setField(statement, field.path, value)
    return { what: changeWords(field, statedValue(before, field.path), value), statement }
  })
  const rest = open.length - told.length
  const inside = changed.length - open.length
  const last = [
    ...(rest > 0 ? [`${rest} more changes of the deck`] : []),
    ...(inside > 0 ? ['Conditions of the work and of the price'] : []),
  ]
  return last.length === 0 ? steps : [...steps, { what: last.join('; '), statement: after }]
}

/** `Width: 22'-0", formerly 20'-0"`. */
export function changeWords(
  field: FieldSpec,
  from: JsonValue | undefined,
  to: JsonValue | undefined,
): string {
  return `${field.label}: ${valueWords(field, to)}, formerly ${valueWords(field, from)}`
}

function valueWords(field: FieldSpec, stated: JsonValue | undefined): string {
  const read = stated === undefined ? null : readValue(field, stated)
  if (read !== null && !read.ok) return excerpt(String(stated))
  const words = printFieldValue(field, read === null ? defaultOf(field) : read.value)
  return words === '' ? 'none' : field.kind === 'text' ? `“${excerpt(words)}”` : words
}

function same(a: JsonValue | undefined, b: JsonValue | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}
