import { fail, ok, type Result } from '../units/index.ts'
import { assembleJob } from './assemble-job.ts'
import { cornerList } from './corner-list.ts'
import { crossFaults } from './cross-faults.ts'
import { defaultPosts } from './default-posts.ts'
import { defaultSetbacks } from './default-setbacks.ts'
import type { FieldValue } from './field-value.ts'
import { FIELDS } from './fields.ts'
import { isObject, kindOf } from './json-shape.ts'
import { readValue } from './read-value.ts'
import { statedParts } from './stated-fields.ts'
import type { Fault, FieldPath, FieldSpec, ReadJob } from './types.ts'
import { upgradeStatement } from './upgrade.ts'

const DEFAULTS: ReadonlyMap<FieldPath, FieldValue> = new Map(
  FIELDS.map((field) => [field.path, defaultOf(field)]),
)

/** A field's default, read as if a person had stated it. A default that its own field refuses is a bug. */
export function defaultOf(field: FieldSpec): FieldValue {
  const read = readValue(field, field.default)
  if (!read.ok) throw new Error(`the default of ${field.path} is refused: ${read.error[0]?.message}`)
  return read.value
}

/**
 * Reads a job from its statement, filling what is absent with defaults.
 * Fails with every fault there is, in the order of the statement, those between fields last.
 */
export function readJob(statement: unknown): Result<ReadJob, readonly Fault[]> {
  if (!isObject(statement)) {
    return fail([
      {
        path: '',
        message: `a job is an object, and this is ${kindOf(statement)}`,
        fix: 'begin it with { and end it with }',
      },
    ])
  }
  const upgraded = upgradeStatement(statement)
  if (!upgraded.ok) return fail([upgraded.error])
  const faults: Fault[] = []
  const values = new Map(DEFAULTS)
  const given: FieldPath[] = []
  for (const part of statedParts(upgraded.value)) {
    if (part.kind === 'fault') {
      faults.push(part.fault)
      continue
    }
    const read = readValue(part.field, part.value)
    if (read.ok) {
      values.set(part.field.path, read.value)
      given.push(part.field.path)
    } else faults.push(...read.error)
  }
  const stated = new Set(given)
  impliedChoices(values, stated)
  sizeOfOutline(values)
  for (const [path, count] of defaultPosts(values, stated)) values.set(path, count)
  for (const [path, setback] of defaultSetbacks(values, stated)) values.set(path, setback)
  const job = assembleJob(values, stated)
  faults.push(...crossFaults(job, (path) => faults.some((fault) => touches(fault.path, path))))
  return faults.length > 0 ? fail(faults) : ok({ job, given })
}

/** Whether a fault lies at a field, below it, or at a branch that holds it. */
function touches(fault: FieldPath, field: FieldPath): boolean {
  return fault === field || fault.startsWith(`${field}.`) || field.startsWith(`${fault}.`)
}

/** The extent of a stated outline is the deck's size, whatever the fields of a rectangle say. */
function sizeOfOutline(values: Map<FieldPath, FieldValue>): void {
  const corners = cornerList(String(values.get('shape.outline')))
  if (corners.length === 0) return
  values.set('size.width', Math.max(...corners.map(({ x }) => x)))
  values.set('size.depth', Math.max(...corners.map(({ y }) => y)))
}

/** A stated sum includes its topic, and stated spots are the ground, unless the statement says otherwise. */
function impliedChoices(values: Map<FieldPath, FieldValue>, given: ReadonlySet<FieldPath>): void {
  for (const path of given) {
    const included = path.replace(/\.allowance$/, '.included')
    if (included !== path && !given.has(included) && values.get(path) !== 0) values.set(included, true)
  }
  const spots = values.get('site.ground.spots')
  if (!given.has('site.ground.kind') && Array.isArray(spots) && spots.length > 0)
    values.set('site.ground.kind', 'spots')
}
