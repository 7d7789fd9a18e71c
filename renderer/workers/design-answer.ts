import type { Design } from '../../core/estimate-types.ts'
import type { Fault } from '../../core/job/index.ts'
import type { Drawing } from '../../core/papers/index.ts'

/** What the worker says to one statement: the design with its drawing, or every fault found. */
export type DesignAnswer =
  | { readonly edit: number; readonly ok: true; readonly design: Design; readonly drawing: Drawing }
  | { readonly edit: number; readonly ok: false; readonly faults: readonly Fault[] }
