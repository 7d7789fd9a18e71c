import { parentPort, workerData } from 'node:worker_threads'
import type { Watch } from '../../../core/cutting/index.ts'
import type { EstimateResult } from '../../../core/estimate-types.ts'
import type { JobStatement } from '../../../core/job/index.ts'
import { answerRequest } from '../../../main/workers/answer-request.ts'
import type { WorkerStart, WorkRequest } from '../../../main/workers/messages.ts'

/**
 * A worker whose job says how it behaves: `busy` milliseconds per estimate or row, `throws`, `dies`, `unproven`. A row's boards
 * tell how many jobs had been worked when it was.
 * It stands in for the core, so that the queueing is tested by itself.
 */
const port = parentPort as NonNullable<typeof parentPort>
const stopBefore = new Int32Array((workerData as WorkerStart).stopBefore)
let worked = 0

function keepBusy(statement: JobStatement): void {
  worked += 1
  if (statement.dies === true) process.exit(3)
  if (statement.throws === true) throw new Error('a bug\nwith its stack')
  const until = performance.now() + Number(statement.busy ?? 0)
  while (performance.now() < until);
}

/**
 * Finds a plan for each of two products, the first one twice, and hears nothing more for a minute; with plans that were
 * told before, names them; stopped from its start, does nothing.
 */
function deaf({ plans, stop, onPlan, onProgress }: Watch): string {
  const plan = (jobId: string, cost: number) => onPlan?.({ jobId, cost } as never)
  if (plans !== undefined && plans.size > 0) {
    return [...plans].map(([id, { cost }]) => `${id} at ${cost}`).join(', ')
  }
  if (stop?.() === true) return 'nothing'
  plan('joists', 9)
  plan('joists', 8)
  plan('beams', 5)
  onProgress?.({ subject: 'beams', part: 2, parts: 2, bound: 1, best: 5, lengthUnit: null })
  keepBusy({ busy: 60_000 })
  return 'not stopped'
}

port.on('message', (request: WorkRequest) => {
  answerRequest(
    request,
    {
      estimate: (statement, _book, _rack, watch) => {
        if (statement.deaf === true)
          return { ok: false, faults: [{ path: deaf(watch), message: '', fix: '' }] }
        keepBusy(statement)
        return {
          ok: false,
          faults: [{ path: String(statement.name), message: `${worked}`, fix: '' }],
        } as EstimateResult
      },
      compareSizes: function* (statement, _book, { width, depth }) {
        for (const size of [width.from, width.to]) {
          keepBusy(statement)
          yield { width: size, depth: depth.from, boards: worked } as never
        }
      },
      compareWidths: function* (statement, _book, { from, to, step, exactFits, except = [] }) {
        const widths: number[] = exactFits === true ? [from + 0.5] : []
        for (let width: number = from; width <= to; width += step) widths.push(width)
        for (const width of widths.filter((one) => !except.some((known) => known === one))) {
          keepBusy(statement)
          yield { width, boards: worked, proven: statement.unproven !== true, fault: null } as never
        }
      },
      planTheRest: (statement) => {
        keepBusy(statement)
        return { ok: false, reasons: [String(statement.name)] }
      },
      sizeIt: (statement) => {
        keepBusy(statement)
        return { ok: false, message: String(statement.name), faults: [], priceFaults: [], checks: [] }
      },
      cutList: ({ text }, _book, watch) => {
        const told = JSON.parse(text)
        if (told.deaf === true) return { ok: false, faults: [{ row: deaf(watch) } as never] }
        // works until it is stopped, and says how far it is
        for (let best = 1_000; told.untilStopped === true && watch.stop?.() === false; best -= 1) {
          keepBusy({ busy: 2 })
          const part = { subject: 'list', part: 1, parts: 1, lengthUnit: null }
          watch.onProgress?.({ ...part, bound: 0, best })
        }
        keepBusy(told)
        return { ok: false, faults: [{ row: worked } as never] }
      },
      ground: ({ statement }) => {
        keepBusy(statement)
        return { ok: false, faults: [] }
      },
      wishPrice: (without, wished) => {
        keepBusy(wished)
        return { ok: false, message: `${without.name}, ${wished.name}` }
      },
      explainJoints: ({ statement, runId, at }) => {
        keepBusy(statement)
        return at.map((point) => ({ kind: 'refused', runId, at: point, label: '', message: '' }))
      },
    },
    (answer) => port.postMessage(answer),
    {
      stop: () => Atomics.load(stopBefore, 0) > request.id,
      onProgress: (progress) => port.postMessage({ kind: 'progress', id: request.id, progress }),
      onPlan: (plan) => port.postMessage({ kind: 'plan', id: request.id, plan }),
    },
  )
})
