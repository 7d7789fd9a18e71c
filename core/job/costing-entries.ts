import type { Cents, UnitPrice } from '../units/index.ts'

/** A line of the estimate as it stood when the job was begun: what is bought and worked is held against it. */
export interface KeptLine {
  /** id of the line in the estimate */
  readonly line: string
  /** heading under which it stands */
  readonly group: string
  readonly what: string
  readonly part: 'material' | 'labour' | 'other'
  /** in 1/1000 of the unit */
  readonly thousandths: number
  readonly unit: string
  readonly price: UnitPrice
  /** worker hours in 1/1000; 0 where the line is no work */
  readonly hours: number
  /** stage of the work, so that hours can be booked on all of it; '' for none */
  readonly stage: string
  /** production rate of the price book that the hours come from; '' for none */
  readonly rate: string
  /** quantity of work in 1/1000 of the rate's unit, and that unit; 0 and '' where there is no rate */
  readonly count: number
  readonly of: string
  /** what the conditions of this job make of the hours, in 1/10,000 */
  readonly factor: number
}

/** Something bought for the job, or taken back by its seller: then quantity and amount are below zero. */
export interface Purchase {
  /** ISO date; '' where none is known */
  readonly date: string
  readonly supplier: string
  /** line of the estimate that it is for; '' for none */
  readonly line: string
  /** what it is, in words; the line's own words may be left out */
  readonly what: string
  /** in 1/1000 of the line's unit; null where only the sum is known */
  readonly thousandths: number | null
  /** as on the receipt, before the sales tax that the job states */
  readonly amount: Cents
  /** number of the receipt, or name of its photo */
  readonly receipt: string
}

/** Hours worked on one task on one day. */
export interface HoursWorked {
  readonly date: string
  /** task of the estimate by its line, or all work of a stage as `stage-frame`; '' for none */
  readonly line: string
  readonly what: string
  readonly who: string
  /** worker hours in 1/1000: two people for three hours are six */
  readonly thousandths: number
}

/** What became of a line: boards that could not be used or were left, and whether more is to come. */
export interface LineState {
  readonly line: string
  /** boards that turned out unusable, and boards left over at the end */
  readonly unusable: number
  readonly left: number
  /** nothing more will be bought or worked for it */
  readonly done: boolean
}

/** The lists of what a job really took; each holds entries of one kind. */
export interface EntryKinds {
  readonly 'kept lines': KeptLine
  readonly purchases: Purchase
  readonly hours: HoursWorked
  readonly 'line states': LineState
}

export type EntryKind = keyof EntryKinds
