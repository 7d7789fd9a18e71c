import { COSTING_FIELDS } from './fields/costing-fields.ts'
import { CUTTING_FIELDS } from './fields/cutting-fields.ts'
import { DECKING_FIELDS } from './fields/decking-fields.ts'
import { FOOTING_FIELDS } from './fields/footing-fields.ts'
import { FRAME_FIELDS } from './fields/frame-fields.ts'
import { GROUND_WORK_FIELDS } from './fields/ground-work-fields.ts'
import { GUARD_FIELDS } from './fields/guard-fields.ts'
import { JOB_FIELDS } from './fields/job-fields.ts'
import { PRICING_FIELDS } from './fields/pricing-fields.ts'
import { SCOPE_FIELDS } from './fields/scope-fields.ts'
import { SHAPE_FIELDS } from './fields/shape-fields.ts'
import { CODE_FIELDS, SITE_FIELDS } from './fields/site-fields.ts'
import { SIZE_FIELDS } from './fields/size-fields.ts'
import { STAIR_FIELDS } from './fields/stair-fields.ts'
import { WISH_FIELDS } from './fields/wish-fields.ts'
import { WORK_FIELDS } from './fields/work-fields.ts'
import type { FieldPath, FieldSpec } from './types.ts'

/** Every field that a job can state, in the order of a form and of a written job; all but its version. */
export const FIELDS: readonly FieldSpec[] = [
  ...JOB_FIELDS,
  ...SIZE_FIELDS,
  ...SHAPE_FIELDS,
  ...SITE_FIELDS,
  ...CODE_FIELDS,
  ...FRAME_FIELDS,
  ...FOOTING_FIELDS,
  ...GROUND_WORK_FIELDS,
  ...DECKING_FIELDS,
  ...STAIR_FIELDS,
  ...GUARD_FIELDS,
  ...WORK_FIELDS,
  ...CUTTING_FIELDS,
  ...WISH_FIELDS,
  ...PRICING_FIELDS,
  ...SCOPE_FIELDS,
  ...COSTING_FIELDS,
]

const BY_PATH: ReadonlyMap<FieldPath, FieldSpec> = new Map(FIELDS.map((field) => [field.path, field]))

/** The field at a path, or undefined where the job has none there. */
export function findField(path: FieldPath): FieldSpec | undefined {
  return BY_PATH.get(path)
}

/** The field at a path that the program itself names. Throws where there is none: that is a bug, not input. */
export function fieldAt(path: FieldPath): FieldSpec {
  const field = BY_PATH.get(path)
  if (field === undefined) throw new RangeError(`the job has no field ${path}`)
  return field
}

/** Fields that change neither the deck nor its price: names, and what the job really took. */
export const FIELDS_WITHOUT_PRICE: ReadonlySet<FieldPath> = new Set(
  FIELDS.filter(
    ({ path, section }) =>
      path === 'name' || path === 'notes' || path.startsWith('customer.') || section === 'costing',
  ).map(({ path }) => path),
)
