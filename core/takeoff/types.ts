import type { Cause, EndCuts, FrameRun, ProductClass } from '../frame/index.ts'

import type { Ticks } from '../units/index.ts'
import type { DeckingForecast } from './decking-forecast.ts'

/** A length to be cut in one piece. */
export interface Piece {
  readonly id: string
  readonly mark: string
  readonly memberId: string
  readonly product: ProductClass
  /** length to order for: finished length plus what is cut off in place */
  readonly length: Ticks
  readonly finished: Ticks
  /** cuts of its two ends, where one is not square; lengths are to the long points */
  readonly ends?: EndCuts
  readonly place: string
  readonly cause: Cause
}

/** Goods bought by count, weight, length or bag. `sku` names an entry of the price book. */
export interface Good {
  readonly id: string
  readonly sku: string
  readonly label: string
  readonly group: 'hardware' | 'fasteners' | 'concrete' | 'other material' | 'hire' | 'fees'
  /** in whole 1/1000 of the unit */
  readonly thousandths: number
  readonly unit: string
  readonly cause: Cause
}

/** A quantity of work; the rate comes from the price book by `rateId`. */
export interface Task {
  readonly id: string
  readonly rateId: string
  readonly label: string
  readonly stage: 'ground' | 'frame' | 'decking' | 'stairs' | 'guard' | 'before' | 'finish' | 'general'
  /** in whole 1/1000 of the unit */
  readonly thousandths: number
  readonly unit: string
  readonly cause: Cause
  /** what crew and conditions make of the hours, in 1/10,000; absent where they are plain */
  readonly conditions?: {
    readonly factor: number
    readonly why: string
    readonly fields: readonly string[]
  }
}

export interface Volumes {
  /** cubic feet, without waste */
  readonly concreteEach: readonly { readonly footingId: string; readonly cubicFeet: number }[]
  readonly concrete: number
  readonly holes: number
  readonly backfill: number
  readonly spoilInPlace: number
  readonly spoilLoose: number
  readonly bags: number
}

/** Board feet by product class, laps counted, order allowances not. */
export interface BoardFeet {
  readonly product: ProductClass
  /** in 1/1000 board foot */
  readonly thousandths: number
}

/** Weight of all lumber in pounds, rounded up; laps counted, order allowances not. */
export interface LumberWeight {
  readonly seasoned: number
  /** an upper estimate for wood fresh from the treater */
  readonly freshlyTreated: number
  readonly cause: Cause
}

export interface Takeoff {
  readonly pieces: readonly Piece[]
  readonly runs: readonly FrameRun[]
  readonly goods: readonly Good[]
  readonly tasks: readonly Task[]
  readonly volumes: Volumes
  readonly boardFeet: readonly BoardFeet[]
  readonly weight: LumberWeight
  /** null where there is no decking */
  readonly decking: DeckingForecast | null
}
