import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { PriceBook } from '../../core/pricing/index.ts'
import type { WorkAnswer } from './messages.ts'
import { Stopped } from './stopped.ts'
import { type WorkerThread, workerThread } from './worker-thread.ts'

export interface CutListWanted {
  readonly request: CutListRequest
  readonly book: PriceBook
}

interface Running {
  readonly id: number
  readonly resolve: (answer: CutListAnswer) => void
  readonly reject: (error: Error) => void
}

/** One cut list at a time on its own worker, which is started by the first; a new one stops the one before. */
export class CutListRuns {
  readonly #workerPath: string
  #thread: WorkerThread | null = null
  #running: Running | null = null
  #lastId = 0
  #closed = false

  constructor(workerPath: string) {
    this.#workerPath = workerPath
  }

  run(wanted: CutListWanted): Promise<CutListAnswer> {
    if (this.#closed) return Promise.reject(new Stopped('Stopped: the program is closing.'))
    return new Promise((resolve, reject) => {
      this.#lastId += 1
      const thread = this.#started()
      if (this.#running !== null) {
        thread.restart()
        this.#finish((before) => before.reject(new Stopped()))
      }
      this.#running = { id: this.#lastId, resolve, reject }
      thread.post({ kind: 'cut list', id: this.#lastId, ...wanted })
    })
  }

  async close(): Promise<void> {
    this.#closed = true
    this.#finish((run) => run.reject(new Stopped('Stopped: the program is closing.')))
    await this.#thread?.close()
  }

  #started(): WorkerThread {
    this.#thread ??= workerThread(
      this.#workerPath,
      (answer) => this.#answered(answer),
      (message) => this.#finish((run) => run.reject(new Error(message))),
    )
    return this.#thread
  }

  #answered(answer: WorkAnswer): void {
    if (answer.id !== this.#running?.id) return
    if (answer.kind === 'cut list') this.#finish((run) => run.resolve(answer.answer))
    if (answer.kind === 'failed') this.#finish((run) => run.reject(new Error(answer.message)))
  }

  #finish(tell: (run: Running) => void): void {
    const done = this.#running
    this.#running = null
    if (done !== null) tell(done)
  }
}
