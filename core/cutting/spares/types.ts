import type { Cents, Share, Ticks } from '../../units/index.ts'

/** One stock length of a class: how many boards the plan needs of it, and what a spare of it costs. */
export interface SpareLength {
  readonly stockId: string
  readonly length: Ticks
  readonly needed: number
  readonly price: Cents
  /** spares are bought in multiples of this */
  readonly step: number
  /** most spares to be had; null: any number */
  readonly most: number | null
}

/** One product class. Its boards can stand in for each other, those of another class cannot. */
export interface SpareClass {
  readonly classId: string
  readonly lengths: readonly SpareLength[]
}

export interface SpareLine {
  readonly classId: string
  readonly stockId: string
  readonly length: Ticks
  readonly count: number
  readonly price: Cents
  readonly amount: Cents
}

/** Spare boards of a whole order. Probabilities are rounded down to 1/100 %. */
export interface Spares {
  readonly lines: readonly SpareLine[]
  readonly cost: Cents
  /** that no second trip is needed, with the spares and without them */
  readonly probability: Share
  readonly without: Share
  /** false: the yard has too few boards, and these are the most that help */
  readonly reached: boolean
  /** no cheaper spares reach it */
  readonly proven: boolean
}
