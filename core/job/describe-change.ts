import { statedValue } from './commands.ts'
import { FIELDS } from './fields.ts'
import { excerpt } from './json-shape.ts'
import { printFieldValue } from './print-field.ts'
import { readValue } from './read-value.ts'
import type { FieldSpec, JobStatement, JsonValue } from './types.ts'

/** Most changes that are told one by one. */
const MOST_TOLD = 2

/** What differs between two statements, as the words after "undo": `width to 22'-0"`; empty where no field does. */
export function describeChange(before: JobStatement, after: JobStatement): string {
  const changes = FIELDS.flatMap((field) => {
    const to = statedValue(after, field.path)
    return sameValue(statedValue(before, field.path), to) ? [] : [{ field, to }]
  })
  if (changes.length > MOST_TOLD) return `${changes.length} fields`
  return changes.map(({ field, to }) => tellChange(field, to)).join(' and ')
}

function tellChange(field: FieldSpec, to: JsonValue | undefined): string {
  const label = `${field.label.charAt(0).toLowerCase()}${field.label.slice(1)}`
  if (to === undefined) return `${label} back to its default`
  const read = readValue(field, to)
  if (read.ok && typeof read.value === 'string')
    return `${label} to “${excerpt(printFieldValue(field, read.value))}”`
  return `${label} to ${read.ok ? printFieldValue(field, read.value) : `“${excerpt(typeof to === 'string' ? to : JSON.stringify(to))}”`}`
}

function sameValue(a: JsonValue | undefined, b: JsonValue | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}
