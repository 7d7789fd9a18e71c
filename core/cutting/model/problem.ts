import type { Ticks } from '../../units/index.ts'
import type { Measure } from '../mitres/measure.ts'
import type { CutJob, Mitres, RunGroup, StockOption } from '../types.ts'

/** One distinct size and kind of pieces: the fixed ones of it, and the most that any plan would want. */
export interface Item {
  /** by the problem's measure; of pieces with square ends their length */
  readonly size: Ticks
  /** by a relaxed measure, what counts as it, as cut; else nothing */
  readonly shapes: readonly {
    readonly length: number
    readonly mitres?: Mitres | undefined
  }[]
  /** of the measure's mix, by its two ends; 0 where neither may share its cut */
  readonly kind: number
  /** size + kerf, in the problem's unit */
  readonly width: number
  /** fixed pieces of this size */
  readonly demand: number
  /** fixed pieces plus the most that runs can ask for */
  readonly limit: number
}

/** What buying or taking a count of boards costs, where that is not count × price. */
export interface CountChoice {
  readonly count: number
  readonly cost: number
}

export interface StockType {
  readonly option: StockOption
  /** length without trims */
  readonly usable: number
  /** usable length + kerf, in whole units of the problem */
  readonly capacity: number
  /** what using one board costs before savings: price (0 where `counts` says it), handling, the cut of its trim */
  readonly base: number
  /** Infinity: endless */
  readonly supply: number
  readonly counts: readonly CountChoice[] | null
}

/** A piece of a run between two points; nodes are (point, joints so far), node 0 is the start, the last one the end. */
export interface RunArc {
  readonly from: number
  readonly to: number
  readonly start: Ticks
  readonly end: Ticks
  /** as cut, laps included */
  readonly length: Ticks
  readonly item: number
  /** joint cost and the cut, in cents; the joint at its far end is its own */
  readonly cost: number
  /** index of the joint point at its far end, −1 at the run's end */
  readonly point: number
  /** most members that may have it */
  readonly most: number
}

/** At most `cap` members jointed at `points`; more at `excess` each, or not at all where that is null. */
export interface RunCap {
  readonly points: readonly number[]
  readonly cap: number
  readonly excess: number | null
}

export interface RunModel {
  readonly group: RunGroup
  readonly members: number
  readonly nodes: number
  /** sorted by `from` */
  readonly arcs: readonly RunArc[]
  readonly caps: readonly RunCap[]
}

/** A cutting job in whole numbers: widths carry the kerf, capacities carry one kerf more. */
export interface Problem {
  readonly job: CutJob
  readonly measure: Measure
  /** ticks in one unit of width */
  readonly unit: number
  /** descending width */
  readonly items: readonly Item[]
  readonly stocks: readonly StockType[]
  readonly runs: readonly RunModel[]
  readonly capacity: number
  /** cents per piece cut */
  readonly perPiece: number
  /** true where a board's cost depends on how much of it is used */
  readonly savings: boolean
}

/** A way to cut one board. */
export interface Pattern {
  readonly stock: number
  /** ascending item index */
  readonly items: readonly number[]
  readonly counts: readonly number[]
  readonly used: number
  readonly cost: number
}
