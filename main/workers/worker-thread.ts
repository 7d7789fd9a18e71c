import { Worker } from 'node:worker_threads'
import { REHEARSAL, type WorkAnswer, type WorkerStart, type WorkRequest } from './messages.ts'

/** The young heap is kept small, for idle workers would hold 100 MB of it emptied; the old one is room for any list. */
const HEAP = { maxYoungGenerationSizeMb: 16, maxOldGenerationSizeMb: 2048 }

/** One worker thread that is there when needed: started at once, started anew after it was stopped or died. */
export interface WorkerThread {
  post(request: WorkRequest): void
  /** requests with a smaller id stop at their next row */
  stopBefore(id: number): void
  /** starts a second one beside it, if there is none, and gives it a request to work; its answers are heard too */
  postToSecond(request: WorkRequest): void
  /** ends the second one, unless it answered first */
  dismissSecond(): void
  /** ends it in the middle of whatever it does; the second one or a fresh one takes its place */
  restart(): void
  close(): Promise<void>
}

/** Answers after which a worker is done with a request. */
const LAST: ReadonlySet<WorkAnswer['kind']> = new Set(['estimate', 'cut list', 'failed'])

export function workerThread(
  file: string,
  onAnswer: (answer: WorkAnswer) => void,
  onDeath: (message: string) => void,
): WorkerThread {
  const memory = new SharedArrayBuffer(4)
  const stop = new Int32Array(memory)
  let closed = false
  let second: Worker | null = null
  let worker = start()

  function start(): Worker {
    const started = new Worker(file, {
      resourceLimits: HEAP,
      workerData: { stopBefore: memory } satisfies WorkerStart,
    })
    let cause = 'The calculation stopped unexpectedly.'
    started.on('message', (answer: WorkAnswer) => {
      if (second === started && answer.id !== REHEARSAL && LAST.has(answer.kind)) putSecondInPlace()
      if (worker === started || second === started) onAnswer(answer)
    })
    started.on('error', (error: Error) => {
      cause = `The calculation stopped unexpectedly: ${(error.message.split('\n')[0] ?? '').slice(0, 500)}`
    })
    started.on('exit', () => {
      if (second === started) second = null
      if (worker !== started || closed) return
      worker = start()
      onDeath(cause)
    })
    return started
  }

  function putSecondInPlace(): void {
    const old = worker
    worker = second ?? start()
    second = null
    void old.terminate()
  }

  return {
    post: (request) => worker.postMessage(request),
    stopBefore: (id) => {
      Atomics.store(stop, 0, id)
    },
    postToSecond: (request) => {
      second ??= start()
      second.postMessage(request)
    },
    dismissSecond: () => {
      const old = second
      second = null
      void old?.terminate()
    },
    restart: putSecondInPlace,
    close: async () => {
      closed = true
      await Promise.all([worker.terminate(), second?.terminate()])
    },
  }
}
