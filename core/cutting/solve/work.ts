import type { WorkLimits } from '../types.ts'

export const DEFAULT_LIMITS: WorkLimits = { columns: 60_000, nodes: 20_000, patterns: 12_000 }

/** What a search has done and may do. The clock has no say; a person's stop has. */
export class Work {
  columns = 0
  nodes = 0
  patterns = 0
  readonly limits: WorkLimits
  readonly #stop: () => boolean
  readonly #onCells: ((cells: number) => void) | undefined
  #stopped = false

  constructor(limits: WorkLimits, stop: () => boolean, onCells?: (cells: number) => void) {
    this.limits = limits
    this.#stop = stop
    this.#onCells = onCells
  }

  /** Tells of so many cells of tables gone through. */
  weigh(cells: number): void {
    this.#onCells?.(cells)
  }

  /** true once a person has asked to stop */
  stopped(): boolean {
    if (!this.#stopped && this.#stop()) this.#stopped = true
    return this.#stopped
  }

  spent(): boolean {
    return this.columns >= this.limits.columns || this.nodes >= this.limits.nodes || this.stopped()
  }
}
