import type { CompareRow, WidthRange } from '../../core/compare/index.ts'
import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { FieldPath, JobStatement } from '../../core/job/index.ts'
import type { RestAnswer, RestRequest } from '../../core/plan-the-rest.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import type { WorkAnswer, WorkRequest } from './messages.ts'

/** The part of the core that a worker runs, its engine already inside. */
export interface Work {
  estimate(statement: JobStatement, book: PriceBook, rack: readonly OffcutsOnHand[]): EstimateResult
  planTheRest(
    statement: JobStatement,
    book: PriceBook,
    rest: RestRequest,
    rack: readonly OffcutsOnHand[],
  ): RestAnswer
  compareWidths(
    statement: JobStatement,
    book: PriceBook,
    range: WidthRange,
    rack: readonly OffcutsOnHand[],
    stop: () => boolean,
  ): Iterable<CompareRow>
  cutList(request: CutListRequest, book: PriceBook): CutListAnswer
  sizeIt(statement: JobStatement, book: PriceBook, held: readonly FieldPath[]): SizingResult
}

/** Runs one request to its end, or until it is told to stop; a bug in it becomes an answer, not a dead worker. */
export function answerRequest(
  request: WorkRequest,
  work: Work,
  post: (answer: WorkAnswer) => void,
  isStopped: () => boolean,
): void {
  const { id } = request
  try {
    if (request.kind === 'estimate') {
      post({ kind: 'estimate', id, result: work.estimate(request.statement, request.book, request.rack) })
      return
    }
    if (request.kind === 'rest') {
      const { statement, book, rest, rack } = request
      post({ kind: 'rest', id, answer: work.planTheRest(statement, book, rest, rack) })
      return
    }
    if (request.kind === 'sizing') {
      post({ kind: 'sizing', id, result: work.sizeIt(request.statement, request.book, request.held) })
      return
    }
    if (request.kind === 'cut list') {
      post({ kind: 'cut list', id, answer: work.cutList(request.request, request.book) })
      return
    }
    let rows = 0
    if (!isStopped()) {
      const { statement, book, range, rack } = request
      for (const row of work.compareWidths(statement, book, range, rack, isStopped)) {
        if (isStopped()) break
        post({ kind: 'row', id, row })
        rows += 1
      }
    }
    post({ kind: 'end', id, complete: !isStopped(), rows })
  } catch (error) {
    post({ kind: 'failed', id, message: sentence(error) })
  }
}

/** First line only: a WASM package's error can carry its whole source as one line of 160 kB. */
function sentence(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error)
  return (text.split('\n')[0] ?? '').slice(0, 500)
}
