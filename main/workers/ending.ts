import type { CutPlan } from '../../core/cutting/index.ts'
import type { WorkRequest } from './messages.ts'
import type { WorkerThread } from './worker-thread.ts'

/** A calculation that has not answered so long after it was asked to stop is ended with its worker, ms. */
const GRACE = 50

/**
 * Ends a calculation that a person stopped. It is asked to; where it is deep in the solver and does not hear, its worker
 * is ended, and a fresh one is given the plans found by then and makes the answer of them.
 */
export class Ending {
  readonly #thread: WorkerThread
  readonly #request: WorkRequest
  readonly #plans = new Map<string, CutPlan>()
  #timer: NodeJS.Timeout | null = null

  constructor(thread: WorkerThread, request: WorkRequest) {
    this.#thread = thread
    this.#request = request
  }

  /** Keeps the best plan so far of a product. */
  keep(plan: CutPlan): void {
    this.#plans.set(plan.jobId, plan)
  }

  stop(): void {
    const { id, kind } = this.#request
    this.#thread.stopBefore(id + 1)
    if (kind === 'estimate' || kind === 'cut list') this.#timer ??= setTimeout(() => this.#endAtOnce(), GRACE)
  }

  /** The answer is there. */
  done(): void {
    if (this.#timer !== null) clearTimeout(this.#timer)
  }

  #endAtOnce(): void {
    this.#thread.restart()
    this.#thread.post({ ...this.#request, plans: [...this.#plans.values()] } as WorkRequest)
  }
}
