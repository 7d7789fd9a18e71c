import type { Member } from '../frame/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import type { Ticks } from '../units/index.ts'

/** An open edge and how far the ground lies below it. */
export interface GuardedEdge {
  readonly edge: DeckEdge
  /** greatest drop within 36 in of the edge, ticks, exact */
  readonly drop: number
  /** IRC 2021 R312.1.1: more than 30 in */
  readonly needed: boolean
}

export interface GuardPost {
  readonly id: string
  /** centre, along the edge from its near end; ticks, not always whole */
  readonly at: number
  /** whether it stands beside a joist that runs into the edge */
  readonly onJoist: boolean
}

/** The clear opening between two posts. */
export interface GuardBay {
  readonly clear: Ticks
  /** balusters in it, and the opening left between them, ticks, exact; none in a panel */
  readonly balusters: number
  readonly opening: number
}

/** A stretch of guard along one edge, from corner, wall or stairs to the next. */
export interface GuardStretch {
  readonly number: number
  readonly edge: DeckEdge
  readonly from: number
  readonly to: number
  readonly posts: readonly GuardPost[]
  readonly bays: readonly GuardBay[]
}

/** The guard on one side of a flight of stairs. */
export interface StairGuard {
  readonly flight: number
  /** along the slope */
  readonly length: Ticks
  readonly posts: number
  readonly bays: readonly GuardBay[]
}

export interface GuardPlan {
  /** every open edge, guarded or not */
  readonly edges: readonly GuardedEdge[]
  readonly stretches: readonly GuardStretch[]
  readonly stairs: readonly StairGuard[]
  readonly members: readonly Member[]
  /** balusters are bought in stock lengths; null where panels fill the bays */
  readonly baluster: { readonly length: Ticks; readonly stock: Ticks; readonly count: number } | null
  /** panels by the length they are sold in, on the level and along stairs */
  readonly panels: readonly { readonly stock: Ticks; readonly sloped: boolean; readonly count: number }[]
  /** posts on the deck; those of the stairs are fixed to stringers */
  readonly deckPosts: number
  readonly stairPosts: number
  readonly gates: number
  /** all rails on the level and along stairs, ticks */
  readonly levelLength: number
  readonly slopedLength: number
}
