import { FIELDS, fieldAt } from './fields.ts'
import { isObject, type JsonObject } from './json-shape.ts'
import type { FieldPath, JobStatement, JsonValue } from './types.ts'

/** Place of every branch and field in a written job, so that a statement's keys stand in one order however it was edited. */
const RANK: ReadonlyMap<FieldPath, number> = ranks()

/** What a statement states at a field, or undefined where the default holds. */
export function statedValue(statement: JobStatement, path: FieldPath): JsonValue | undefined {
  let value: JsonValue | undefined = statement
  for (const key of keysOf(path)) {
    if (!isObject(value) || !Object.hasOwn(value, key)) return undefined
    value = value[key]
  }
  return value
}

/** The statement with one field stated. Anything that is no object on the way to it is replaced. */
export function setField(statement: JobStatement, path: FieldPath, value: JsonValue): JobStatement {
  return withKey(statement, '', keysOf(path), value)
}

/** The statement with one field back at its default; branches left empty go too. */
export function clearField(statement: JobStatement, path: FieldPath): JobStatement {
  return statedValue(statement, path) === undefined ? statement : withoutKey(statement, keysOf(path))
}

function keysOf(path: FieldPath): readonly string[] {
  return fieldAt(path).path.split('.')
}

function withKey(branch: JsonObject, at: FieldPath, keys: readonly string[], value: JsonValue): JsonObject {
  const [key = '', ...rest] = keys
  const path = at === '' ? key : `${at}.${key}`
  const below = Object.hasOwn(branch, key) ? branch[key] : undefined
  const next = rest.length === 0 ? value : withKey(isObject(below) ? below : {}, path, rest, value)
  if (Object.hasOwn(branch, key)) return { ...branch, [key]: next }
  const entries = Object.entries(branch)
  const rank = RANK.get(path) ?? 0
  const later = entries.findIndex(([name]) => (RANK.get(at === '' ? name : `${at}.${name}`) ?? -1) > rank)
  return Object.fromEntries(entries.toSpliced(later === -1 ? entries.length : later, 0, [key, next]))
}

function withoutKey(branch: JsonObject, keys: readonly string[]): JsonObject {
  const [key = '', ...rest] = keys
  const { [key]: below, ...others } = branch
  if (rest.length === 0 || !isObject(below)) return others
  const left = withoutKey(below, rest)
  return Object.keys(left).length === 0 ? others : { ...branch, [key]: left }
}

function ranks(): ReadonlyMap<FieldPath, number> {
  const found = new Map<FieldPath, number>()
  for (const { path } of FIELDS) {
    const keys = path.split('.')
    for (let depth = 1; depth <= keys.length; depth += 1) {
      const branch = keys.slice(0, depth).join('.')
      if (!found.has(branch)) found.set(branch, found.size)
    }
  }
  return found
}
