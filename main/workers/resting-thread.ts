import type { WorkerThread } from './worker-thread.ts'

/** A worker that has had nothing to do for so long, ms, ends: it holds some 50 MB. The next run starts another. */
export const IDLE = 20_000

/** A worker that is started when it is first needed, and ends when it has had nothing to do for a while. */
export class RestingThread {
  readonly #start: () => WorkerThread
  readonly #idle: number
  #thread: WorkerThread | null = null
  #timer: NodeJS.Timeout | null = null

  /** @param idle how long it is kept without work, ms; Infinity: as long as the program runs */
  constructor(start: () => WorkerThread, idle: number = IDLE) {
    this.#start = start
    this.#idle = idle
  }

  /** The worker, which stays until `rest` is said. */
  wake(): WorkerThread {
    this.#stopTimer()
    this.#thread ??= this.#start()
    return this.#thread
  }

  /** It has nothing to do from now on. */
  rest(): void {
    this.#stopTimer()
    if (this.#thread === null || this.#idle === Number.POSITIVE_INFINITY) return
    this.#timer = setTimeout(() => void this.close(), this.#idle).unref()
  }

  async close(): Promise<void> {
    this.#stopTimer()
    const thread = this.#thread
    this.#thread = null
    await thread?.close()
  }

  #stopTimer(): void {
    if (this.#timer !== null) clearTimeout(this.#timer)
    this.#timer = null
  }
}
