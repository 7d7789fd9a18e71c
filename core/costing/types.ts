import type { KeptLine } from '../job/index.ts'
import type { Cents, Share } from '../units/index.ts'

/** One line: what it was estimated at, what it took so far, and what is still to come. Hours are in 1/1000. */
export interface CostedLine {
  readonly line: KeptLine
  /** false: bought or worked beside the estimate */
  readonly planned: boolean
  readonly estimated: Cents
  /** bought so far in 1/1000 of the line's unit, returns taken off; null where a purchase tells its sum only */
  readonly bought: number | null
  /** worker hours so far */
  readonly worked: number
  readonly actual: Cents
  /** actual − estimated */
  readonly difference: Cents
  /** the difference as a share of the estimate; null where nothing was estimated */
  readonly share: Share | null
  /** what is still to be bought or worked, as estimated; nothing once the line is done or the job is finished */
  readonly open: Cents
  /** the same in 1/1000 of the line's unit, or worker hours of work */
  readonly openQuantity: number
  readonly done: boolean
  readonly unusable: number
  readonly left: number
}

/** Sums of several lines. */
export interface CostedSum {
  readonly estimated: Cents
  readonly actual: Cents
  readonly difference: Cents
  readonly share: Share | null
  readonly open: Cents
  /** actual + open: what it comes to if the rest goes as estimated */
  readonly likely: Cents
}

export interface CostedGroup extends CostedSum {
  readonly group: string
  readonly lines: readonly CostedLine[]
}

/** Boards of all lines together: what was bought, what of it could not be used, what was left. */
export interface CostedBoards {
  readonly bought: number
  readonly unusable: number
  readonly left: number
  /** unusable ÷ bought; null where none was bought */
  readonly unusableShare: Share | null
}

/** What a job really took beside its estimate. */
export interface Costing {
  readonly finished: boolean
  readonly groups: readonly CostedGroup[]
  readonly material: CostedSum
  /** sales tax on material, at the rate that the job states */
  readonly tax: CostedSum
  readonly labour: CostedSum
  readonly other: CostedSum
  /** all of it, tax included: the direct cost */
  readonly direct: CostedSum
  /** worker hours in 1/1000 */
  readonly hours: { readonly estimated: number; readonly worked: number; readonly open: number }
  readonly boards: CostedBoards
  /** lines of the estimate for which nothing is written down, and what they hold of it */
  readonly untouched: { readonly count: number; readonly estimated: Cents }
  /** what the price leaves for overhead and profit; null where an owner builds */
  readonly left: { readonly price: Cents; readonly estimated: Cents; readonly likely: Cents } | null
}

/** The estimate that a job is held against. */
export interface Held {
  readonly lines: readonly KeptLine[]
  readonly price: Cents
  readonly hourly: Cents
}

/** A task of one finished job. */
export interface TaskOfJob {
  readonly job: string
  /** the task in the words of its estimate */
  readonly what: string
  /** in 1/1000 of the rate's unit */
  readonly count: number
  readonly factor: number
  /** worker hours in 1/1000 */
  readonly estimated: number
  readonly worked: number
}

/** What the hours of finished jobs make of a production rate; crew hours per unit are in 1/100,000. */
export interface ProposedRate {
  readonly rate: string
  readonly label: string
  readonly unit: string
  readonly workers: number
  readonly jobs: readonly TaskOfJob[]
  readonly estimated: number
  readonly worked: number
  readonly now: number
  readonly proposed: number
  /** the least and greatest of the single jobs */
  readonly least: number
  readonly greatest: number
}
