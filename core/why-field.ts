import type { Design, WhyStep } from './estimate-types.ts'
import {
  FIELDS,
  type FieldPath,
  type FieldSpec,
  type FieldValue,
  type Job,
  printFieldValue,
} from './job/index.ts'

/** The fields of the job at a path, or below it, each with its value and whether it was stated. */
export function fieldSteps(
  { job, given }: Pick<Design, 'job' | 'given'>,
  path: FieldPath,
): readonly WhyStep[] {
  const fields = FIELDS.filter((field) => field.path === path || field.path.startsWith(`${path}.`))
  return fields.flatMap((field) => {
    const value = valueAt(job, field.path)
    return value === undefined ? [] : [fieldStep(field, value, given.includes(field.path))]
  })
}

function fieldStep(field: FieldSpec, value: FieldValue, stated: boolean): WhyStep {
  const whence = stated ? 'stated in the job' : `by default (${field.basis})`
  return {
    id: field.path,
    text: `${field.label}: ${printFieldValue(field, value)}, ${whence}`,
    cause: null,
    because: [],
  }
}

/** What a job holds at a field's path; undefined where another choice leaves the field out. */
function valueAt(job: Job, path: FieldPath): FieldValue | undefined {
  return path
    .split('.')
    .reduce<unknown>((at, key) => (at as { readonly [key: string]: unknown } | undefined)?.[key], job) as
    | FieldValue
    | undefined
}
