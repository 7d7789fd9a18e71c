import type { Check, Finding } from '../checks/index.ts'
import type { Watch } from '../cutting/index.ts'
import type { LumberSize } from '../data/index.ts'
import type { Fault, FieldPath, Job, JobStatement, JsonValue } from '../job/index.ts'
import type { PriceFault } from '../pricing/index.ts'
import type { Cents, Ticks } from '../units/index.ts'

export interface JoistChoice {
  readonly size: LumberSize
  readonly spacing: Ticks
}
export interface BeamChoice {
  readonly size: LumberSize
  readonly plies: number
  readonly posts: number
}
export interface FootingChoice {
  readonly tube: Ticks
  /** 0 where the tube stands on the ground itself */
  readonly base: Ticks
  readonly thickness: Ticks
}

/** Where the beams lie: outer face of the rim on their side to their centre line. */
export interface Setbacks {
  readonly front: Ticks
  readonly rear: Ticks
}

/** One way to size a frame. */
export interface Choice {
  readonly setbacks: Setbacks
  readonly joist: JoistChoice
  readonly front: BeamChoice
  /** null where a ledger holds that side */
  readonly rear: BeamChoice | null
  readonly postSize: LumberSize
  readonly footing: FootingChoice
}

/** What may be chosen from, part by part. */
export interface Catalogue {
  readonly setbacks: readonly Setbacks[]
  readonly joists: readonly JoistChoice[]
  readonly front: readonly BeamChoice[]
  /** null alone where there is no rear beam */
  readonly rear: readonly (BeamChoice | null)[]
  readonly postSizes: readonly LumberSize[]
  readonly footings: readonly FootingChoice[]
}

/** One field that sizing changes. */
export interface SizingChange {
  readonly field: FieldPath
  readonly label: string
  readonly from: string
  readonly to: string
  /** as a job file states it */
  readonly value: JsonValue
}

export type SizedPart = 'joists' | 'front beam' | 'rear beam' | 'posts' | 'footings'

/**
 * What sizes have to hold by: every check passes by a row of its table; or, where none does because no table covers the
 * frame in any size, by the calculation alone there.
 */
export type SizingBasis = 'tables' | 'calculation'

/** Why a part came out as it did. */
export interface SizingReason {
  readonly part: SizedPart
  /** e.g. "2x8 at 16 in" */
  readonly chosen: string
  /** the check of it that comes nearest its limit; null where none has a ratio */
  readonly governs: { readonly check: Check; readonly finding: Finding } | null
  /** the next smaller options, each by itself, and what speaks against them */
  readonly smaller: readonly { readonly option: string; readonly why: string }[]
}

export interface SizingWork {
  /** ways of the catalogue */
  readonly ways: number
  /** framed and checked */
  readonly checked: number
  /** planned and priced in full */
  readonly priced: number
  /** no way of the catalogue that passes costs less */
  readonly proven: boolean
  readonly basis: SizingBasis
}

export interface Sized {
  readonly changes: readonly SizingChange[]
  /** the statement with all changes made: one step */
  readonly statement: JobStatement
  /** null where the job as stated has no price */
  readonly costBefore: Cents | null
  /** the same of it as of the cost after */
  readonly beforeAtMost: boolean
  readonly costAfter: Cents
  /** its plans were sought less long than an estimate seeks them, which may find it a little less */
  readonly atMost: boolean
  /** checks of the job as stated that sizing can mend and that do not pass */
  readonly failingBefore: readonly Check[]
  readonly reasons: readonly SizingReason[]
  /** checks that no table covers and that hold by calculation alone, where none of the catalogue passes by tables */
  readonly byCalculation: readonly Check[]
  /** checks that do not pass and that no size mends: something else must be done about them */
  readonly remaining: readonly Check[]
  readonly work: SizingWork
}

export type SizingResult =
  | { readonly ok: true; readonly sized: Sized }
  | {
      readonly ok: false
      readonly faults: readonly Fault[]
      readonly priceFaults: readonly PriceFault[]
      /** one sentence: why there is nothing to propose */
      readonly message: string
      /** what stands in the way of the way that came nearest */
      readonly checks: readonly Check[]
    }

export interface SizingOptions extends Watch {
  /** fields that stay as they are */
  readonly held?: readonly FieldPath[]
  /** fewer ways to choose from than the whole catalogue */
  readonly narrow?: (catalogue: Catalogue, job: Job) => Catalogue
  readonly limits?: Partial<SizingLimits>
}

/** Work after which the best way so far is told, not proven. */
export interface SizingLimits {
  /** steps of 10 microseconds or so */
  readonly effort: number
}
