import { type CompareRow, compareWidths, type WidthRange } from '../../core/compare/index.ts'
import { type CutListAnswer, type CutListRequest, runCutList } from '../../core/cut-list/index.ts'
import { estimate } from '../../core/estimate.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { JobStatement } from '../../core/job/index.ts'
import type { PriceBook } from '../../core/pricing/index.ts'
import { loadEngine } from '../workers/lp/index.ts'

/** The core with its engine inside, for a door that waits for one answer and ends. */
export interface Calculations {
  estimate(statement: JobStatement, book: PriceBook): EstimateResult
  compareWidths(statement: JobStatement, book: PriceBook, range: WidthRange): Iterable<CompareRow>
  cutList(request: CutListRequest, book: PriceBook): CutListAnswer
}

export async function loadCalculations(): Promise<Calculations> {
  const engine = await loadEngine()
  return {
    estimate: (statement, book) => estimate(statement, book, engine),
    compareWidths: (statement, book, range) => compareWidths(statement, book, engine, range),
    cutList: (request, book) => runCutList(request, book, engine),
  }
}
