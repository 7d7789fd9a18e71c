import { parentPort, workerData } from 'node:worker_threads'
import { compareSizes, compareWidths } from '../../core/compare/index.ts'
import { runCutList } from '../../core/cut-list/index.ts'
import { type EstimateOptions, estimate } from '../../core/estimate.ts'
import { groundReport } from '../../core/ground/index.ts'
import { planTheRest } from '../../core/plan-the-rest.ts'
import { sizeIt } from '../../core/sizing/index.ts'
import { whyJoints } from '../../core/why-joints.ts'
import { wishPrice } from '../../core/wish-price.ts'
import { answerRequest } from './answer-request.ts'
import { loadEngine } from './lp/index.ts'
import type { WorkAnswer, WorkerStart, WorkRequest } from './messages.ts'

/** Cutting plans kept between requests; each is some tens of kilobytes. Most edits leave most products as they were. */
const PLANS_KEPT = 200
/** how often a person who watches is told how far it is, ms */
const TELL_EVERY = 120

if (parentPort === null) throw new Error('estimate-worker.ts runs as a worker thread only')
const port = parentPort
const stopBefore = new Int32Array((workerData as WorkerStart).stopBefore)

// messages that come while the engine loads wait in the port
const engine = await loadEngine()
const known: NonNullable<EstimateOptions['known']> = new Map()
const work: Parameters<typeof answerRequest>[1] = {
  estimate: (statement, book, rack, watch) => estimate(statement, book, engine, { known, rack, ...watch }),
  planTheRest: (statement, book, rest, rack, watch) =>
    planTheRest(statement, book, engine, rest, rack, watch),
  compareWidths: (statement, book, range, rack, stop) =>
    compareWidths(statement, book, engine, range, { known, rack, stop, quickFirst: true }),
  compareSizes: (statement, book, grid, rack, stop) =>
    compareSizes(statement, book, engine, grid, { known, rack, stop }),
  cutList: (request, book, watch) => runCutList(request, book, engine, watch),
  sizeIt: (statement, book, held, watch) => sizeIt(statement, book, engine, { held, ...watch }),
  ground: ({ statement, book, rack, found }) => {
    const result = groundReport(statement, book, engine, {
      rack,
      known,
      ...(found === null ? {} : { found }),
    })
    return result.ok ? { ok: true, ground: result.value.ground } : { ok: false, faults: result.error }
  },
  wishPrice: (without, wished, book, rack, watch) =>
    wishPrice(without, wished, book, engine, { known, rack, ...watch }),
  explainJoints: ({ statement, book, rack, runId, at }, watch) => {
    const made = estimate(statement, book, engine, { known, rack, ...watch })
    if (!made.ok) return []
    const only = (run: string, point: number) => run === runId && at.some((asked) => asked === point)
    return whyJoints(made.estimate, book, engine, { only, rack })
  },
}

port.on('message', (request: WorkRequest) => {
  const post = (answer: WorkAnswer) => port.postMessage(answer)
  let told = performance.now()
  answerRequest(request, work, post, {
    stop: () => Atomics.load(stopBefore, 0) > request.id,
    onProgress: (progress) => {
      const now = performance.now()
      if (now - told < TELL_EVERY) return
      told = now
      post({ kind: 'progress', id: request.id, progress })
    },
    onPlan: isWatched(request) ? (plan) => post({ kind: 'plan', id: request.id, plan }) : undefined,
  })
  for (const oldest of known.keys()) {
    if (known.size <= PLANS_KEPT) break
    known.delete(oldest)
  }
})

function isWatched(request: WorkRequest): boolean {
  return (request.kind === 'estimate' || request.kind === 'cut list') && request.watched === true
}
