import type { WorkLimits } from '../types.ts'

export const DEFAULT_LIMITS: WorkLimits = { columns: 60_000, nodes: 20_000, patterns: 12_000 }

/** Cells of the tables that boards are filled by: with what the engine is asked, most of the work that a plan takes. */
export interface CellMeter {
  /** how many may still be gone through */
  readonly left: () => number
  readonly spend: (cells: number) => void
}

/** What a search has done and may do. The clock has no say; a person's stop has. */
export class Work {
  columns = 0
  nodes = 0
  patterns = 0
  readonly limits: WorkLimits
  readonly #stop: () => boolean
  readonly cells: CellMeter | undefined
  #stopped = false

  constructor(limits: WorkLimits, stop: () => boolean, cells?: CellMeter) {
    this.limits = limits
    this.#stop = stop
    this.cells = cells
  }

  /** Tells of so many cells of tables gone through. */
  weigh(cells: number): void {
    this.cells?.spend(cells)
  }

  /** The same of cells to be gone through; false where they are more than may be, which ends the search. */
  mayWeigh(cells: number): boolean {
    if (this.cells !== undefined && cells > this.cells.left()) this.end()
    if (this.#stopped) return false
    this.weigh(cells)
    return true
  }

  /** The search is over, as if a person had asked to stop. */
  end(): void {
    this.#stopped = true
  }

  /** true once a person has asked to stop, or the search was ended */
  stopped(): boolean {
    if (!this.#stopped && this.#stop()) this.#stopped = true
    return this.#stopped
  }

  spent(): boolean {
    return this.columns >= this.limits.columns || this.nodes >= this.limits.nodes || this.stopped()
  }
}
