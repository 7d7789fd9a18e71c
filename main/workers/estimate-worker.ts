import { parentPort, workerData } from 'node:worker_threads'
import { compareWidths } from '../../core/compare/index.ts'
import { estimate } from '../../core/estimate.ts'
import { answerRequest } from './answer-request.ts'
import { loadEngine } from './lp/index.ts'
import type { WorkAnswer, WorkerStart, WorkRequest } from './messages.ts'

if (parentPort === null) throw new Error('estimate-worker.ts runs as a worker thread only')
const port = parentPort
const stopBefore = new Int32Array((workerData as WorkerStart).stopBefore)

// messages that come while the engine loads wait in the port
const engine = await loadEngine()
const work = {
  estimate: (statement, book) => estimate(statement, book, engine),
  compareWidths: (statement, book, range) => compareWidths(statement, book, engine, range),
} satisfies Parameters<typeof answerRequest>[1]

port.on('message', (request: WorkRequest) => {
  answerRequest(
    request,
    work,
    (answer: WorkAnswer) => port.postMessage(answer),
    () => Atomics.load(stopBefore, 0) > request.id,
  )
})
