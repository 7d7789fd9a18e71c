import type { CompareRow, SizeGrid, WidthRange } from '../../core/compare/index.ts'
import type { JobStatement } from '../../core/job/index.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import type { WorkAnswer } from './messages.ts'
import { RestingThread } from './resting-thread.ts'
import { workerThread } from './worker-thread.ts'

/** A comparison that has not stopped at its next row within this time is ended with its worker, ms. */
const GRACE = 60

interface RowsWanted {
  readonly statement: JobStatement
  readonly book: PriceBook
  /** offcuts on hand; none by default */
  readonly rack?: readonly OffcutsOnHand[]
  readonly onRow: (row: CompareRow) => void
  readonly task?: string | undefined
}

/** The deck at each width of a range. */
export interface CompareWanted extends RowsWanted {
  readonly range: WidthRange
}

/** The deck in each size of a grid. */
export interface SizesWanted extends RowsWanted {
  readonly grid: SizeGrid
}

export interface CompareEnd {
  readonly complete: boolean
  readonly rows: number
}

type Running = (CompareWanted | SizesWanted) & {
  readonly id: number
  readonly resolve: (end: CompareEnd) => void
  readonly reject: (error: Error) => void
  rows: number
}

/** One comparison at a time on its own worker; a new one stops the one before. */
export class CompareRuns {
  readonly #thread: RestingThread
  #running: Running | null = null
  #waiting: Running | null = null
  #timer: NodeJS.Timeout | null = null
  #lastId = 0
  #closed = false

  /** @param idle how long its worker is kept without work, ms */
  constructor(workerPath: string, idle?: number) {
    this.#thread = new RestingThread(
      () =>
        workerThread(
          workerPath,
          (answer) => this.#answered(answer),
          (message) => this.#finish((run) => run.reject(new Error(message))),
        ),
      idle,
    )
  }

  run(wanted: CompareWanted | SizesWanted): Promise<CompareEnd> {
    if (this.#closed) return Promise.resolve({ complete: false, rows: 0 })
    return new Promise((resolve, reject) => {
      this.#lastId += 1
      const run: Running = { ...wanted, id: this.#lastId, resolve, reject, rows: 0 }
      this.stop()
      this.#waiting = run
      if (this.#running === null) this.#next()
    })
  }

  /** Ends the running comparison and the waiting one; both answer that they are not complete. */
  stop(): void {
    this.#waiting?.resolve({ complete: false, rows: 0 })
    this.#waiting = null
    if (this.#running === null) return
    this.#thread.wake().stopBefore(this.#running.id + 1)
    this.#timer ??= setTimeout(() => {
      this.#thread.wake().restart()
      this.#finish((run) => run.resolve({ complete: false, rows: run.rows }))
    }, GRACE)
  }

  /** @returns whether that comparison ran; it answers that it is not complete */
  stopTask(task: string): boolean {
    if (this.#running?.task !== task && this.#waiting?.task !== task) return false
    this.stop()
    return true
  }

  async close(): Promise<void> {
    this.#closed = true
    this.stop()
    this.#finish((run) => run.resolve({ complete: false, rows: run.rows }))
    await this.#thread.close()
  }

  #next(): void {
    this.#running = this.#waiting
    this.#waiting = null
    if (this.#running === null) return
    const { id, statement, book, rack = [] } = this.#running
    const asked = { id, statement, book, rack }
    this.#thread
      .wake()
      .post(
        'grid' in this.#running
          ? { kind: 'sizes', ...asked, grid: this.#running.grid }
          : { kind: 'compare', ...asked, range: this.#running.range },
      )
  }

  #answered(answer: WorkAnswer): void {
    const run = this.#running
    if (run === null || answer.id !== run.id) return
    if (answer.kind === 'row' && this.#timer === null) {
      run.rows += 1
      run.onRow(answer.row)
    }
    if (answer.kind === 'end') {
      this.#finish(() =>
        run.resolve({ complete: answer.complete && run.rows === answer.rows, rows: run.rows }),
      )
    }
    if (answer.kind === 'failed') this.#finish(() => run.reject(new Error(answer.message)))
  }

  #finish(tell: (run: Running) => void): void {
    if (this.#timer !== null) clearTimeout(this.#timer)
    this.#timer = null
    const done = this.#running
    this.#running = null
    this.#thread.rest()
    this.#next()
    if (done !== null) tell(done)
  }
}
