import type { Filling } from './knapsack-table.ts'

/** A filling of a board: how much of it is used, and what kinds of ends its pieces leave (0 where none may share cuts). */
export interface Spot {
  readonly used: number
  readonly state: number
}

/** The best fillings of boards of every capacity at once, widest items last. */
export interface BoardTable {
  /** worth by state and use: value[state × (capacity + 1) + used] */
  readonly value: Float64Array
  /** cells that one filling of the table goes through: what it costs */
  readonly cells: number
  /** Fills the table; see `KnapsackTable.fill`. */
  fill(
    profits: ArrayLike<number>,
    exact: boolean,
    visit?: (item: number) => void,
    ends?: readonly number[],
  ): void
  /** worth of the best filling of a board so far */
  valueAt(capacity: number): number
  /** worth of the best filling so far beside one more of an item; −Infinity where that does not fit */
  valueBeside(item: number, capacity: number): number
  spotAt(capacity: number): Spot
  spotBeside(item: number, capacity: number): Spot
  /** the filling of a spot as it stood when `widest` was the last item applied */
  traceSpot(widest: number, spot: Spot): Filling
}
