import type { Cents, Ticks } from '../../units/index.ts'

/**
 * What another way costs above the plan, in cents of boards and joints: between `atLeast` (from its bound) and `most`
 * (from the best plan found of it), equal where that is proven; `atLeast` counts preferences as the plan does. Below zero
 * only where a preference chose the plan, or the plan itself is not proven.
 */
export interface Difference {
  readonly atLeast: Cents
  readonly most: Cents
}

/** A joint that the plan makes. */
export interface MadeJoint {
  readonly kind: 'made'
  readonly runId: string
  readonly at: Ticks
  readonly label: string
  readonly memberIds: readonly string[]
  /** what the best order without a joint of this run here costs more; null: there is no such order */
  readonly withoutIt: Difference | null
  /** what the best order with the whole run in one piece costs more; null: no board is long enough */
  readonly inOnePiece: Difference | null
  readonly message: string
}

/** A point where the run could be jointed and is not. */
export interface UnusedJoint {
  readonly kind: 'unused'
  readonly runId: string
  readonly at: Ticks
  readonly label: string
  /** what the best order with one member jointed here costs more; null: not priced, and the message says why */
  readonly withIt: Difference | null
  readonly message: string
}

/** A point where a rule allows no joint. */
export interface RefusedJoint {
  readonly kind: 'refused'
  readonly runId: string
  readonly at: Ticks
  readonly label: string
  readonly message: string
}

export type JointReason = MadeJoint | UnusedJoint | RefusedJoint
