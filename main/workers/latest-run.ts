import type { WorkProgress } from '../../core/cutting/index.ts'
import { Ending } from './ending.ts'
import type { WorkAnswer, WorkRequest } from './messages.ts'
import { Stopped } from './stopped.ts'
import { type WorkerThread, workerThread } from './worker-thread.ts'

/** A worker that has had nothing to do for so long, ms, ends: it holds some 50 MB. The next run starts another. */
const IDLE = 20_000

/** Work that somebody watches: by name it can be stopped. */
export interface Task {
  readonly task?: string | undefined
  readonly onProgress?: ((progress: WorkProgress) => void) | undefined
}

interface Running<Answer> extends Task {
  readonly id: number
  readonly ending: Ending
  readonly resolve: (answer: Answer) => void
  readonly reject: (error: Error) => void
}

export interface LatestRunOptions<Wanted, Answer> {
  readonly workerPath: string
  readonly request: (id: number, wanted: Wanted) => WorkRequest
  /** the answer to such a request, or null where it is of another kind */
  readonly answer: (answer: WorkAnswer) => { readonly value: Answer } | null
  /** how long a worker without work is kept, ms; 20,000 by default */
  readonly idle?: number
}

/** One calculation at a time on its own worker, which is started by the first; a new one stops the one before. */
export class LatestRun<Wanted, Answer> {
  readonly #options: LatestRunOptions<Wanted, Answer>
  #thread: WorkerThread | null = null
  #running: Running<Answer> | null = null
  #idle: NodeJS.Timeout | null = null
  #lastId = 0
  #closed = false

  constructor(options: LatestRunOptions<Wanted, Answer>) {
    this.#options = options
  }

  run(wanted: Wanted, task: Task = {}): Promise<Answer> {
    if (this.#closed) return Promise.reject(new Stopped('Stopped: the program is closing.'))
    return new Promise((resolve, reject) => {
      this.#lastId += 1
      const thread = this.#started()
      if (this.#running !== null) {
        thread.restart()
        this.#finish((before) => before.reject(new Stopped()))
      }
      const id = this.#lastId
      const request = { ...this.#options.request(id, wanted), watched: task.task !== undefined }
      this.#running = { ...task, id, ending: new Ending(thread, request), resolve, reject }
      thread.post(request)
    })
  }

  /** Ends a task at its best so far, which is then its answer. @returns whether it ran */
  stop(task: string): boolean {
    if (this.#running?.task !== task) return false
    this.#running.ending.stop()
    return true
  }

  async close(): Promise<void> {
    this.#closed = true
    this.#finish((run) => run.reject(new Stopped('Stopped: the program is closing.')))
    if (this.#idle !== null) clearTimeout(this.#idle)
    await this.#thread?.close()
  }

  #started(): WorkerThread {
    if (this.#idle !== null) clearTimeout(this.#idle)
    this.#idle = null
    this.#thread ??= workerThread(
      this.#options.workerPath,
      (answer) => this.#answered(answer),
      (message) => this.#finish((run) => run.reject(new Error(message))),
    )
    return this.#thread
  }

  #answered(answer: WorkAnswer): void {
    if (answer.id !== this.#running?.id) return
    if (answer.kind === 'progress') {
      this.#running.onProgress?.(answer.progress)
      return
    }
    if (answer.kind === 'plan') {
      this.#running.ending.keep(answer.plan)
      return
    }
    const found = this.#options.answer(answer)
    if (found !== null) this.#finish((run) => run.resolve(found.value))
    else if (answer.kind === 'failed') this.#finish((run) => run.reject(new Error(answer.message)))
  }

  #finish(tell: (run: Running<Answer>) => void): void {
    const done = this.#running
    done?.ending.done()
    this.#running = null
    if (this.#thread !== null && !this.#closed) {
      if (this.#idle !== null) clearTimeout(this.#idle)
      this.#idle = setTimeout(() => this.#rest(), this.#options.idle ?? IDLE).unref()
    }
    if (done !== null) tell(done)
  }

  #rest(): void {
    this.#idle = null
    if (this.#running !== null) return
    const thread = this.#thread
    this.#thread = null
    void thread?.close()
  }
}
