import type { CompareRow, SizeGrid, WidthRange } from '../../core/compare/index.ts'
import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { CutPlan, JointReason, WorkProgress } from '../../core/cutting/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { GroundResult } from '../../core/ground/index.ts'
import type { FieldPath, Found, JobStatement } from '../../core/job/index.ts'
import type { RestAnswer, RestRequest } from '../../core/plan-the-rest.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import type { Ticks } from '../../core/units/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'

/** Of a calculation that a person may stop: plans come as they are found, and go in again where it was ended at once. */
export interface Stoppable {
  readonly watched?: boolean
  readonly plans?: readonly CutPlan[]
}

/** Id of a request whose answer nobody wants: it makes a worker's next answer quick. It is stopped from its start. */
export const REHEARSAL = -1

/** What a worker is asked. `id` rises with every request to that worker, from 1. */
export type WorkRequest =
  | ({
      readonly kind: 'estimate'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      /** offcuts on hand */
      readonly rack: readonly OffcutsOnHand[]
      /** from first plans, without the proof */
      readonly quick?: true
    } & Stoppable)
  | {
      readonly kind: 'rest'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      readonly rack: readonly OffcutsOnHand[]
      readonly rest: RestRequest
    }
  | {
      readonly kind: 'compare'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      readonly range: WidthRange
      readonly rack: readonly OffcutsOnHand[]
    }
  | {
      readonly kind: 'sizes'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      readonly grid: SizeGrid
      readonly rack: readonly OffcutsOnHand[]
    }
  | {
      readonly kind: 'sizing'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      readonly held: readonly FieldPath[]
    }
  | ({
      readonly kind: 'cut list'
      readonly id: number
      readonly request: CutListRequest
      readonly book: PriceBook
    } & Stoppable)
  | {
      readonly kind: 'ground'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      readonly rack: readonly OffcutsOnHand[]
      readonly found: Found | null
    }
  | {
      readonly kind: 'wish'
      readonly id: number
      readonly statement: JobStatement
      readonly wished: JobStatement
      readonly book: PriceBook
      readonly rack: readonly OffcutsOnHand[]
    }
  | {
      readonly kind: 'joints'
      readonly id: number
      readonly statement: JobStatement
      readonly book: PriceBook
      readonly rack: readonly OffcutsOnHand[]
      readonly runId: string
      readonly at: readonly Ticks[]
    }

/** What it answers: any number of rows and of words on how far it is, then one of the others. */
export type WorkAnswer =
  | { readonly kind: 'estimate'; readonly id: number; readonly result: EstimateResult }
  | { readonly kind: 'rest'; readonly id: number; readonly answer: RestAnswer }
  | { readonly kind: 'cut list'; readonly id: number; readonly answer: CutListAnswer }
  | { readonly kind: 'sizing'; readonly id: number; readonly result: SizingResult }
  | { readonly kind: 'ground'; readonly id: number; readonly result: GroundResult }
  | { readonly kind: 'wish'; readonly id: number; readonly price: WishPrice }
  | { readonly kind: 'joints'; readonly id: number; readonly reasons: readonly JointReason[] }
  | { readonly kind: 'plan'; readonly id: number; readonly plan: CutPlan }
  | { readonly kind: 'progress'; readonly id: number; readonly progress: WorkProgress }
  | { readonly kind: 'row'; readonly id: number; readonly row: CompareRow }
  | { readonly kind: 'end'; readonly id: number; readonly complete: boolean; readonly rows: number }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string }

/**
 * Given to a worker at its start. `stopBefore[0]` is shared memory: a request with a smaller id stops soon,
 * keeping what it has, without a message having to get through to a busy thread.
 */
export interface WorkerStart {
  readonly stopBefore: SharedArrayBuffer
}
