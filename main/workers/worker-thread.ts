import { Worker } from 'node:worker_threads'
import type { WorkAnswer, WorkerStart, WorkRequest } from './messages.ts'

/** The young heap is kept small, for idle workers would hold 100 MB of it emptied; the old one is room for any list. */
const HEAP = { maxYoungGenerationSizeMb: 16, maxOldGenerationSizeMb: 2048 }

/** One worker thread that is there when needed: started at once, started anew after it was stopped or died. */
export interface WorkerThread {
  post(request: WorkRequest): void
  /** requests with a smaller id stop at their next row */
  stopBefore(id: number): void
  /** ends it in the middle of whatever it does; a fresh one takes its place */
  restart(): void
  close(): Promise<void>
}

export function workerThread(
  file: string,
  onAnswer: (answer: WorkAnswer) => void,
  onDeath: (message: string) => void,
): WorkerThread {
  const memory = new SharedArrayBuffer(4)
  const stop = new Int32Array(memory)
  let closed = false
  let worker = start()

  function start(): Worker {
    const started = new Worker(file, {
      resourceLimits: HEAP,
      workerData: { stopBefore: memory } satisfies WorkerStart,
    })
    let cause = 'The calculation stopped unexpectedly.'
    started.on('message', (answer: WorkAnswer) => {
      if (worker === started) onAnswer(answer)
    })
    started.on('error', (error: Error) => {
      cause = `The calculation stopped unexpectedly: ${(error.message.split('\n')[0] ?? '').slice(0, 500)}`
    })
    started.on('exit', () => {
      if (worker !== started || closed) return
      worker = start()
      onDeath(cause)
    })
    return started
  }

  return {
    post: (request) => worker.postMessage(request),
    stopBefore: (id) => {
      Atomics.store(stop, 0, id)
    },
    restart: () => {
      const old = worker
      worker = start()
      void old.terminate()
    },
    close: async () => {
      closed = true
      await worker.terminate()
    },
  }
}
