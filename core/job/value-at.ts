import type { FieldValue } from './field-value.ts'
import { fieldAt } from './fields.ts'
import { isObject } from './json-shape.ts'
import { defaultOf } from './read-job.ts'
import type { FieldPath, Job } from './types.ts'

/**
 * The value that a read job holds at a field. A field that the job does not use (the falls of ground given by
 * spots) is at its default. Throws on a path that is no field: that is a bug, not input.
 */
export function valueAt(job: Job, path: FieldPath): FieldValue {
  const field = fieldAt(path)
  let value: unknown = job
  for (const key of path.split('.')) value = isObject(value) ? value[key] : undefined
  return value === undefined ? defaultOf(field) : (value as FieldValue)
}
