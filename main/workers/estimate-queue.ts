import type { EstimateResult } from '../../core/estimate-types.ts'
import type { JobStatement } from '../../core/job/index.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import { Ending } from './ending.ts'
import type { Task } from './latest-run.ts'
import type { WorkAnswer } from './messages.ts'
import { Stopped } from './stopped.ts'
import { type WorkerThread, workerThread } from './worker-thread.ts'

/** An estimate that keeps a newer one waiting longer than this is stopped, ms. */
const PATIENCE = 1500

export interface EstimateWanted extends Task {
  readonly statement: JobStatement
  readonly book: PriceBook
  /** offcuts on hand; none by default */
  readonly rack?: readonly OffcutsOnHand[]
  /** an edit's estimate gives way to that of a newer edit; one asked for by name (a workbook) does not */
  readonly givesWay: boolean
}

interface Waiting extends EstimateWanted {
  readonly id: number
  readonly resolve: (result: EstimateResult) => void
  readonly reject: (error: Error) => void
}

/** Estimates one after the other on one warm worker; of the edits waiting only the newest is worked. */
export class EstimateQueue {
  readonly #thread: WorkerThread
  readonly #patience: number
  #running: Waiting | null = null
  #ending: Ending | null = null
  #waiting: Waiting[] = []
  #timer: NodeJS.Timeout | null = null
  #lastId = 0

  constructor(workerPath: string, patience = PATIENCE) {
    this.#patience = patience
    this.#thread = workerThread(
      workerPath,
      (answer) => this.#answered(answer),
      (message) => this.#finish((request) => request.reject(new Error(message))),
    )
  }

  run(wanted: EstimateWanted): Promise<EstimateResult> {
    return new Promise((resolve, reject) => {
      this.#lastId += 1
      if (wanted.givesWay) {
        for (const old of this.#waiting.filter((request) => request.givesWay)) old.reject(new Stopped())
        this.#waiting = this.#waiting.filter((request) => !request.givesWay)
      }
      this.#waiting.push({ ...wanted, id: this.#lastId, resolve, reject })
      if (this.#running === null) this.#next()
      else if (this.#running.givesWay)
        this.#timer ??= setTimeout(() => this.#loseThePatience(), this.#patience)
    })
  }

  /** Ends a task at its best so far, which is then its answer. @returns whether it ran */
  stop(task: string): boolean {
    if (this.#running?.task !== task) return false
    this.#ending?.stop()
    return true
  }

  async close(): Promise<void> {
    const ended = new Stopped('Stopped: the program is closing.')
    const left = this.#waiting
    this.#waiting = []
    for (const request of left) request.reject(ended)
    this.#finish((request) => request.reject(ended))
    await this.#thread.close()
  }

  #next(): void {
    this.#running = this.#waiting.shift() ?? null
    if (this.#running === null) return
    const { id, statement, book, rack = [], task } = this.#running
    const request = { kind: 'estimate', id, statement, book, rack, watched: task !== undefined } as const
    this.#ending = new Ending(this.#thread, request)
    this.#thread.post(request)
    if (this.#waiting.length > 0 && this.#running.givesWay) {
      this.#timer = setTimeout(() => this.#loseThePatience(), this.#patience)
    }
  }

  #answered(answer: WorkAnswer): void {
    if (answer.id !== this.#running?.id) return
    if (answer.kind === 'progress') this.#running.onProgress?.(answer.progress)
    if (answer.kind === 'plan') this.#ending?.keep(answer.plan)
    if (answer.kind === 'estimate') this.#finish((request) => request.resolve(answer.result))
    if (answer.kind === 'failed') this.#finish((request) => request.reject(new Error(answer.message)))
  }

  #finish(tell: (request: Waiting) => void): void {
    if (this.#timer !== null) clearTimeout(this.#timer)
    this.#timer = null
    this.#ending?.done()
    this.#ending = null
    const done = this.#running
    this.#running = null
    this.#next()
    if (done !== null) tell(done)
  }

  #loseThePatience(): void {
    this.#thread.restart()
    this.#finish((request) => request.reject(new Stopped()))
  }
}
