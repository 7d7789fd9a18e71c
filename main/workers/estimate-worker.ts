import { parentPort, workerData } from 'node:worker_threads'
import { compareWidths } from '../../core/compare/index.ts'
import { runCutList } from '../../core/cut-list/index.ts'
import { type EstimateOptions, estimate } from '../../core/estimate.ts'
import { planTheRest } from '../../core/plan-the-rest.ts'
import { sizeIt } from '../../core/sizing/index.ts'
import { answerRequest } from './answer-request.ts'
import { loadEngine } from './lp/index.ts'
import type { WorkAnswer, WorkerStart, WorkRequest } from './messages.ts'

/** Cutting plans kept between requests; each is some tens of kilobytes. Most edits leave most products as they were. */
const PLANS_KEPT = 200

if (parentPort === null) throw new Error('estimate-worker.ts runs as a worker thread only')
const port = parentPort
const stopBefore = new Int32Array((workerData as WorkerStart).stopBefore)

// messages that come while the engine loads wait in the port
const engine = await loadEngine()
const known: NonNullable<EstimateOptions['known']> = new Map()
const work: Parameters<typeof answerRequest>[1] = {
  estimate: (statement, book, rack) => estimate(statement, book, engine, { known, rack }),
  planTheRest: (statement, book, rest, rack) => planTheRest(statement, book, engine, rest, rack),
  compareWidths: (statement, book, range, rack, stop) =>
    compareWidths(statement, book, engine, range, { known, rack, stop, quickFirst: true }),
  cutList: (request, book) => runCutList(request, book, engine),
  sizeIt: (statement, book, held) => sizeIt(statement, book, engine, { held }),
}

port.on('message', (request: WorkRequest) => {
  answerRequest(
    request,
    work,
    (answer: WorkAnswer) => port.postMessage(answer),
    () => Atomics.load(stopBefore, 0) > request.id,
  )
  for (const oldest of known.keys()) {
    if (known.size <= PLANS_KEPT) break
    known.delete(oldest)
  }
})
