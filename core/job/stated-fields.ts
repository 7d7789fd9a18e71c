import { fail, ok, type Result } from '../units/index.ts'
import { FIELDS, findField } from './fields.ts'
import { excerpt, isObject, type JsonObject, kindOf } from './json-shape.ts'
import { nearestName } from './nearest-name.ts'
import { isOfFurtherStairs } from './stair-branches.ts'
import type { Fault, FieldPath, FieldSpec, JsonValue } from './types.ts'

/** Names known below each branch of the job ('' is its root), fields and branches alike. */
const NAMES_BELOW: ReadonlyMap<FieldPath, readonly string[]> = namesBelow()

/** A part of a statement: a field with what is stated for it, or a name or shape that the job does not know. */
export type StatedPart =
  | { readonly kind: 'field'; readonly field: FieldSpec; readonly value: JsonValue }
  | { readonly kind: 'fault'; readonly fault: Fault }

/** Everything that a statement states, in its own order; all but its version. */
export function statedParts(statement: JsonObject, branch: FieldPath = ''): readonly StatedPart[] {
  return Object.entries(statement).flatMap(([key, value]): readonly StatedPart[] => {
    if (branch === '' && key === 'version') return []
    const known = knownBelow(branch, key)
    if (!known.ok) return [{ kind: 'fault', fault: known.error }]
    const field = findField(known.value)
    if (field !== undefined) return [{ kind: 'field', field, value }]
    return isObject(value)
      ? statedParts(value, known.value)
      : [{ kind: 'fault', fault: notABranch(known.value, value) }]
  })
}

function notABranch(path: FieldPath, value: JsonValue): Fault {
  return {
    path,
    message: `"${path}" is ${kindOf(value)}`,
    fix: `give an object with fields such as "${NAMES_BELOW.get(path)?.[0]}"`,
  }
}

function knownBelow(branch: FieldPath, key: string): Result<FieldPath, Fault> {
  const path = branch === '' ? key : `${branch}.${key}`
  const names = NAMES_BELOW.get(branch) ?? []
  if (names.includes(key)) return ok(path)
  const where = branch === '' ? 'a job' : `"${branch}"`
  return fail({
    path,
    message: `${where} has no field "${excerpt(key)}"`,
    fix: suggestion(branch, key, names),
  })
}

function suggestion(branch: FieldPath, key: string, names: readonly string[]): string {
  if (key === '') return `the names here are ${listed(names)}`
  const dotted = branch === '' ? key : `${branch}.${key}`
  if (key.includes('.') && findField(dotted) !== undefined)
    return `write its parts one inside the other: ${nested(key)}`
  // what further stairs have, the first have too
  const first = FIELDS.filter(({ path }) => !isOfFurtherStairs(path))
  const elsewhere = first.filter(
    (field) => field.path.split('.').at(-1) === key || field.path.endsWith(`.${key}`),
  )
  // a bare width is that of the deck, not that of its stairs
  const meant = elsewhere.length === 1 ? elsewhere[0] : elsewhere.find(({ section }) => section === 'size')
  if (meant !== undefined) return `it belongs at ${meant.path}`
  const sibling = names.find((name) => beginsAlike(name, key)) ?? nearestName(key, names)
  if (sibling !== null) return `the nearest known name is "${sibling}"`
  const cousin = nearestName(
    key,
    first.map((field) => field.path.split('.').at(-1) ?? ''),
  )
  const home = first.find((field) => field.path.split('.').at(-1) === cousin)
  return home === undefined
    ? `the names here are ${listed(names)}`
    : `the nearest known field is ${home.path}`
}

/** Whether a name was begun and not ended, or ended and written on: three letters at least tell it from another. */
function beginsAlike(name: string, key: string): boolean {
  const [short, long] = [name.toLowerCase(), key.toLowerCase()].toSorted((a, b) => a.length - b.length)
  return short !== undefined && long !== undefined && short.length >= 3 && long.startsWith(short)
}

function nested(key: string): string {
  const parts = key.split('.')
  return `${parts.map((part) => `"${excerpt(part)}": `).join('{ ')}…${' }'.repeat(parts.length - 1)}`
}

function listed(names: readonly string[]): string {
  return names.map((name) => `"${name}"`).join(', ')
}

function namesBelow(): ReadonlyMap<FieldPath, readonly string[]> {
  const below = new Map<FieldPath, string[]>([['', ['version']]])
  for (const { path } of FIELDS) {
    const parts = path.split('.')
    for (const [depth, part] of parts.entries()) {
      const branch = parts.slice(0, depth).join('.')
      const names = below.get(branch) ?? []
      if (!names.includes(part)) names.push(part)
      below.set(branch, names)
    }
  }
  return below
}
