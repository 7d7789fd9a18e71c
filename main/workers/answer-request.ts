import type { CompareRow, WidthRange } from '../../core/compare/index.ts'
import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { JobStatement } from '../../core/job/index.ts'
import type { PriceBook } from '../../core/pricing/index.ts'
import type { WorkAnswer, WorkRequest } from './messages.ts'

/** The part of the core that a worker runs, its engine already inside. */
export interface Work {
  estimate(statement: JobStatement, book: PriceBook): EstimateResult
  compareWidths(
    statement: JobStatement,
    book: PriceBook,
    range: WidthRange,
    stop: () => boolean,
  ): Iterable<CompareRow>
  cutList(request: CutListRequest, book: PriceBook): CutListAnswer
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
      post({ kind: 'estimate', id, result: work.estimate(request.statement, request.book) })
      return
    }
    if (request.kind === 'cut list') {
      post({ kind: 'cut list', id, answer: work.cutList(request.request, request.book) })
      return
    }
    let rows = 0
    if (!isStopped()) {
      for (const row of work.compareWidths(request.statement, request.book, request.range, isStopped)) {
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
