import type { WorkProgress } from '../../core/cutting/index.ts'
import { Ending } from './ending.ts'
import type { WorkAnswer, WorkRequest } from './messages.ts'
import { RestingThread } from './resting-thread.ts'
import { Stopped } from './stopped.ts'
import { workerThread } from './worker-thread.ts'

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
  readonly #thread: RestingThread
  #running: Running<Answer> | null = null
  #lastId = 0
  #closed = false

  constructor(options: LatestRunOptions<Wanted, Answer>) {
    this.#options = options
    this.#thread = new RestingThread(
      () =>
        workerThread(
          options.workerPath,
          (answer) => this.#answered(answer),
          (message) => this.#finish((run) => run.reject(new Error(message))),
        ),
      options.idle,
    )
  }

  run(wanted: Wanted, task: Task = {}): Promise<Answer> {
    if (this.#closed) return Promise.reject(new Stopped('Stopped: the program is closing.'))
    return new Promise((resolve, reject) => {
      this.#lastId += 1
      if (this.#running !== null) {
        this.#thread.wake().restart()
        this.#finish((before) => before.reject(new Stopped()))
      }
      const thread = this.#thread.wake()
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
    await this.#thread.close()
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
    if (!this.#closed) this.#thread.rest()
    if (done !== null) tell(done)
  }
}
