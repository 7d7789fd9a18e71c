import type { CutPlan } from '../../core/cutting/index.ts'
import { REHEARSAL, type WorkRequest } from './messages.ts'
import type { WorkerThread } from './worker-thread.ts'

/** A calculation that runs so long, ms, may be stopped soon: the window shows the way to it after a second. */
const READY_AFTER = 250

/**
 * Ends a calculation that a person stopped. It is asked to; where it is deep in the solver it does not hear. So a second
 * worker is made ready once it takes long, and then makes the answer of the plans found: whoever answers first is heard.
 */
export class Ending {
  readonly #thread: WorkerThread
  readonly #request: WorkRequest
  readonly #plans = new Map<string, CutPlan>()
  readonly #timer: NodeJS.Timeout | null

  constructor(thread: WorkerThread, request: WorkRequest) {
    this.#thread = thread
    this.#request = request
    this.#timer =
      isStoppable(request) && request.watched === true
        ? setTimeout(() => this.#rehearse(), READY_AFTER)
        : null
  }

  /** Keeps the best plan so far of a product. */
  keep(plan: CutPlan): void {
    this.#plans.set(plan.jobId, plan)
  }

  stop(): void {
    this.#thread.stopBefore(this.#request.id + 1)
    if (isStoppable(this.#request)) this.#thread.postToSecond(this.#withPlans(this.#request))
  }

  /** The answer is there. */
  done(): void {
    if (this.#timer !== null) clearTimeout(this.#timer)
    this.#thread.dismissSecond()
  }

  /** A worker's first answer takes three times as long as its next. */
  #rehearse(): void {
    if (isStoppable(this.#request)) {
      this.#thread.postToSecond({ ...this.#withPlans(this.#request), id: REHEARSAL })
    }
  }

  #withPlans(request: StoppableRequest): WorkRequest {
    return { ...request, plans: [...this.#plans.values()] }
  }
}

type StoppableRequest = Extract<WorkRequest, { kind: 'estimate' | 'cut list' }>

/** Of the others nothing is told while they are worked, or what is told is all they have. */
function isStoppable(request: WorkRequest): request is StoppableRequest {
  return request.kind === 'estimate' || request.kind === 'cut list'
}
