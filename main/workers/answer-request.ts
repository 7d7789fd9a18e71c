import type { CompareRow, SizeGrid, WidthRange } from '../../core/compare/index.ts'
import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { JointReason, Watch } from '../../core/cutting/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { GroundResult } from '../../core/ground/index.ts'
import type { FieldPath, JobStatement } from '../../core/job/index.ts'
import type { RestAnswer, RestRequest } from '../../core/plan-the-rest.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'
import type { WorkAnswer, WorkRequest } from './messages.ts'

type Rack = readonly OffcutsOnHand[]

/** The part of the core that a worker runs, its engine already inside. */
export interface Work {
  estimate(
    statement: JobStatement,
    book: PriceBook,
    rack: Rack,
    watch: Watch & { readonly quick?: boolean },
  ): EstimateResult
  planTheRest(
    statement: JobStatement,
    book: PriceBook,
    rest: RestRequest,
    rack: Rack,
    watch: Watch,
  ): RestAnswer
  compareWidths(
    statement: JobStatement,
    book: PriceBook,
    range: WidthRange,
    rack: Rack,
    stop: () => boolean,
  ): Iterable<CompareRow>
  compareSizes(
    statement: JobStatement,
    book: PriceBook,
    grid: SizeGrid,
    rack: Rack,
    stop: () => boolean,
  ): Iterable<CompareRow>
  cutList(request: CutListRequest, book: PriceBook, watch: Watch): CutListAnswer
  sizeIt(statement: JobStatement, book: PriceBook, held: readonly FieldPath[], watch: Watch): SizingResult
  ground(request: Extract<WorkRequest, { kind: 'ground' }>): GroundResult
  wishPrice(without: JobStatement, wished: JobStatement, book: PriceBook, rack: Rack, watch: Watch): WishPrice
  explainJoints(request: Extract<WorkRequest, { kind: 'joints' }>, watch: Watch): readonly JointReason[]
}

/** Runs one request to its end, or until it is told to stop; a bug in it becomes an answer, not a dead worker. */
export function answerRequest(
  request: WorkRequest,
  work: Work,
  post: (answer: WorkAnswer) => void,
  watch: Watch & { readonly stop: () => boolean },
): void {
  try {
    post(
      request.kind === 'compare' || request.kind === 'sizes'
        ? tellRows(request.id, rowsOf(request, work, watch.stop), post, watch.stop)
        : answerOf(request, work, watch),
    )
  } catch (error) {
    post({ kind: 'failed', id: request.id, message: sentence(error) })
  }
}

function answerOf(
  request: Exclude<WorkRequest, { kind: 'compare' | 'sizes' }>,
  work: Work,
  watching: Watch,
): WorkAnswer {
  const { id, book } = request
  const plans = 'plans' in request ? new Map(request.plans?.map((plan) => [plan.jobId, plan])) : undefined
  const watch = { ...watching, plans }
  switch (request.kind) {
    case 'estimate': {
      const { statement, rack, quick = false } = request
      return { kind: 'estimate', id, result: work.estimate(statement, book, rack, { ...watch, quick }) }
    }
    case 'rest': {
      const { statement, rest, rack } = request
      return { kind: 'rest', id, answer: work.planTheRest(statement, book, rest, rack, watch) }
    }
    case 'sizing':
      return { kind: 'sizing', id, result: work.sizeIt(request.statement, book, request.held, watch) }
    case 'cut list':
      return { kind: 'cut list', id, answer: work.cutList(request.request, book, watch) }
    case 'ground':
      return { kind: 'ground', id, result: work.ground(request) }
    case 'wish': {
      const { statement, wished, rack } = request
      return { kind: 'wish', id, price: work.wishPrice(statement, wished, book, rack, watch) }
    }
    case 'joints':
      return { kind: 'joints', id, reasons: work.explainJoints(request, watch) }
  }
}

function rowsOf(
  request: Extract<WorkRequest, { kind: 'compare' | 'sizes' }>,
  work: Work,
  isStopped: () => boolean,
): Iterable<CompareRow> {
  const { statement, book, rack } = request
  return request.kind === 'compare'
    ? work.compareWidths(statement, book, request.range, rack, isStopped)
    : work.compareSizes(statement, book, request.grid, rack, isStopped)
}

function tellRows(
  id: number,
  all: Iterable<CompareRow>,
  post: (answer: WorkAnswer) => void,
  isStopped: () => boolean,
): WorkAnswer {
  let rows = 0
  if (!isStopped()) {
    for (const row of all) {
      if (isStopped()) break
      post({ kind: 'row', id, row })
      rows += 1
    }
  }
  return { kind: 'end', id, complete: !isStopped(), rows }
}

/** First line only: a WASM package's error can carry its whole source as one line of 160 kB. */
function sentence(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error)
  return (text.split('\n')[0] ?? '').slice(0, 500)
}
