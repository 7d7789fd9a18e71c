import type { Cents, Share, Ticks } from '../../units/index.ts'
import type { Board, CutJob, CutPlan, Infeasible, PlannedJoint, RunPiece } from '../types.ts'

/** How far a plan has been carried out, and what went otherwise. Boards are named by their numbers in the plan. */
export interface DayState {
  /** what has come from the yard: the whole order, or these boards; a board sawn or culled has come in any case */
  readonly bought: 'all' | readonly number[]
  /** boards sawn: all their pieces, or these (by id); pieces are sawn one after another from the board's left end */
  readonly sawn: readonly { readonly board: number; readonly pieces: 'all' | readonly string[] }[]
  /** pieces that came out wrong: at another length, or not usable at all (null) */
  readonly miscuts: readonly {
    readonly board: number
    readonly pieceId: string
    readonly length: Ticks | null
  }[]
  /** stretches of a board that cannot be used, from its left end */
  readonly culls: readonly { readonly board: number; readonly from: Ticks; readonly to: Ticks }[]
  /** what the yard has left of a stock length (null: enough) and what it asks for it now (null: as planned) */
  readonly yard: readonly {
    readonly stockId: string
    readonly left: number | null
    readonly price: Cents | null
  }[]
  /** whole boards lying there beyond those of the plan: spares, remainders of packs */
  readonly spares: readonly { readonly stockId: string; readonly count: number }[]
  /** what the yard pays back for a whole board, as a share of its price; 0: boards are not taken back */
  readonly refund: Share
}

/** What cannot be of a stated day. */
export interface DayFault {
  readonly where: string
  readonly message: string
  readonly fix: string
}

export type NoReplan =
  | { readonly kind: 'day'; readonly faults: readonly DayFault[] }
  | { readonly kind: 'infeasible'; readonly infeasible: Infeasible }

export interface BoardCount {
  readonly stockId: string
  readonly length: Ticks
  readonly count: number
}

export interface BoardsToBuy extends BoardCount {
  readonly price: Cents
  readonly amount: Cents
}

/** Stock of the rest: whole boards lying there, or what is left of boards. */
export interface Lying {
  readonly id: string
  /** stock that a whole board was bought as; null: a part of a board */
  readonly of: string | null
  readonly length: Ticks
  /** numbers of the boards in the old plan */
  readonly boards: readonly number[]
  /** whole boards beyond those of the plan */
  readonly spares: number
}

/** The rest of a plan, planned again. */
export interface Replan {
  /** boards as they were sawn: only pieces that exist and are right */
  readonly sawn: readonly Board[]
  /** boards, or what is left of them, that are still sawn as planned */
  readonly stays: readonly Board[]
  /** the pieces that had to be planned again and what they may be cut from; null: none */
  readonly rest: { readonly job: CutJob; readonly plan: CutPlan } | null
  /** what lies there to cut from, by the stock ids of the rest */
  readonly lying: readonly Lying[]
  /** numbers of the boards of the old plan that are not sawn as planned */
  readonly changed: readonly number[]
  /** pieces of the old plan that must be made again or elsewhere */
  readonly again: readonly { readonly id: string; readonly mark: string; readonly length: Ticks }[]
  /** everything still to be bought */
  readonly buy: readonly BoardsToBuy[]
  /** of it, more than the plan still asked for */
  readonly more: readonly BoardCount[]
  /** planned, not bought, and no longer needed */
  readonly notToBuy: readonly BoardCount[]
  /** whole boards lying there that nothing is cut from; `refund` for all of them together */
  readonly over: readonly (BoardCount & { readonly refund: Cents })[]
  /** runs of the whole job as they come out, sawn pieces included */
  readonly runPieces: readonly RunPiece[]
  readonly joints: readonly PlannedJoint[]
  readonly memberOrder: CutPlan['memberOrder']
  /** `planned`: what the old plan still would have cost; `now`: what is to be paid now; `extra`: their difference with joints */
  readonly money: {
    readonly planned: Cents
    readonly now: Cents
    readonly joints: Cents
    readonly extra: Cents
    readonly refund: Cents
  }
  /** the dearer way that leaves more boards as planned; null: there is none, or this is it */
  readonly fewerChanges: Replan | null
  /** no other way to finish costs less, with every sawn piece kept where it was meant to go */
  readonly proven: boolean
  readonly why: string
}
