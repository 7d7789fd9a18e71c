import { fail, ok, type Result } from '../units/index.ts'
import { assembleJob } from './assemble-job.ts'
import { crossFaults } from './cross-faults.ts'
import type { FieldValue } from './field-value.ts'
import { FIELDS } from './fields.ts'
import { isObject, kindOf } from './json-shape.ts'
import { readValue } from './read-value.ts'
import { statedFields } from './stated-fields.ts'
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
  const { stated, faults: shapeFaults } = statedFields(upgraded.value)
  const faults: Fault[] = [...shapeFaults]
  const values = new Map(DEFAULTS)
  const given: FieldPath[] = []
  for (const [field, value] of stated) {
    const read = readValue(field, value)
    if (read.ok) {
      values.set(field.path, read.value)
      given.push(field.path)
    } else faults.push(...read.error)
  }
  impliedChoices(values, new Set(given))
  const faulty = new Set(faults.map((fault) => fault.path))
  faults.push(...crossFaults(assembleJob(values)).filter((fault) => !faulty.has(fault.path)))
  return faults.length > 0 ? fail(faults) : ok({ job: assembleJob(values), given })
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
