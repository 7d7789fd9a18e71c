import type { PlanPoint } from '../../../core/frame/index.ts'
import type { FieldPath, JsonValue } from '../../../core/job/index.ts'
import type { Ticks } from '../../../core/units/index.ts'

/** One way in which a grip moves. Lengths in ticks. */
export interface GripAxis {
  /** what is measured, as "from the left end" */
  readonly name: string
  /** where on the plan its value grows to, of length 1 */
  readonly way: PlanPoint
  readonly value: Ticks
  readonly min: number
  readonly max: number
  /** a step of the trade, and the fine one; both on a grid that begins at 0 */
  readonly step: number
  readonly fine: number
}

/** What a move states: fields of the job (undefined: back to its default), and how the step is called. */
export interface Change {
  readonly fields: { readonly [path: FieldPath]: JsonValue | undefined }
  readonly label: string
}

/** Something of the plan that can be taken hold of and moved. */
export interface Grip {
  /** "edge-2", "corner-3", or the id of the beam or the post */
  readonly id: string
  readonly kind: 'edge' | 'corner' | 'beam' | 'post'
  readonly label: string
  /** where it lies on the plan; both ends alike for a corner and a post */
  readonly line: readonly [PlanPoint, PlanPoint]
  readonly axes: readonly GripAxis[]
  /** what the job states where the axes have these values */
  change(values: readonly Ticks[]): Change
}
