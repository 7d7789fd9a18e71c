import type { CompareRow } from '../../core/compare/index.ts'
import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { FieldPath, JobStatement } from '../../core/job/index.ts'
import type { RestAnswer, RestRequest } from '../../core/plan-the-rest.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import { type CompareEnd, CompareRuns, type CompareWanted } from './compare-runs.ts'
import { contentKey } from './content-key.ts'
import { EstimateQueue, type EstimateWanted } from './estimate-queue.ts'
import { KeptRows, stepsOf } from './kept-rows.ts'
import { LatestRun } from './latest-run.ts'
import { Recent } from './recent.ts'

export interface CutListWanted {
  readonly request: CutListRequest
  readonly book: PriceBook
}

export interface SizingWanted {
  readonly statement: JobStatement
  readonly book: PriceBook
  readonly held: readonly FieldPath[]
}

export interface RestWanted {
  readonly statement: JobStatement
  readonly book: PriceBook
  readonly rack: readonly OffcutsOnHand[]
  readonly rest: RestRequest
}

/** The calculations, off the thread that serves the window: each kind has a worker of its own. */
export interface Pool {
  estimate(wanted: EstimateWanted): Promise<EstimateResult>
  /**
   * Rows arrive by `onRow`: those already worked at once, the others nearest to the deck's own width first; of two rows
   * of one width the later is the better. Answers how many widths were told.
   */
  compare(wanted: CompareWanted): Promise<CompareEnd>
  cutList(wanted: CutListWanted): Promise<CutListAnswer>
  sizeIt(wanted: SizingWanted): Promise<SizingResult>
  planTheRest(wanted: RestWanted): Promise<RestAnswer>
  close(): Promise<void>
}

/** Answers kept: an estimate is a few hundred kilobytes, the rows of a deck somewhat less. */
const ESTIMATES_KEPT = 8
const DECKS_KEPT = 8

/** @param options patience: how long, in ms, an estimate may keep a newer edit waiting before it is stopped */
export function createPool(options: { readonly workerPath: string; readonly patience?: number }): Pool {
  const estimates = new EstimateQueue(options.workerPath, options.patience)
  const comparisons = new CompareRuns(options.workerPath)
  const cutLists = new LatestRun<CutListWanted, CutListAnswer>({
    ...options,
    request: (id, wanted) => ({ kind: 'cut list', id, ...wanted }),
    answer: (answer) => (answer.kind === 'cut list' ? { value: answer.answer } : null),
  })
  const sizings = new LatestRun<SizingWanted, SizingResult>({
    ...options,
    request: (id, wanted) => ({ kind: 'sizing', id, ...wanted }),
    answer: (answer) => (answer.kind === 'sizing' ? { value: answer.result } : null),
  })
  const rests = new LatestRun<RestWanted, RestAnswer>({
    ...options,
    request: (id, wanted) => ({ kind: 'rest', id, ...wanted }),
    answer: (answer) => (answer.kind === 'rest' ? { value: answer.answer } : null),
  })
  const results = new Recent<EstimateResult>(ESTIMATES_KEPT)
  const kept = new KeptRows(DECKS_KEPT)

  return {
    estimate: async (wanted) => {
      const key = contentKey(wanted.statement, wanted.book, wanted.rack ?? [])
      const known = results.get(key)
      if (known !== undefined) return known
      const result = await estimates.run(wanted)
      results.set(key, result)
      return result
    },
    compare: async (wanted) => {
      const { range } = wanted
      const deck = kept.of(wanted.statement, wanted.book, wanted.rack ?? [])
      const known = deck.within(range)
      const final = known.filter((kept) => kept.final).map(({ row }) => row.width)
      comparisons.stop()
      const widths = new Set<number>()
      const tell = (row: CompareRow) => {
        widths.add(row.width)
        wanted.onRow(row)
      }
      for (const { row } of known) tell(row)
      if (range.exactFits !== true && final.length === stepsOf(range)) {
        return { complete: true, rows: widths.size }
      }
      const end = await comparisons.run({
        ...wanted,
        range: { ...range, except: final },
        onRow: (row) => {
          deck.add(row, range)
          tell(row)
        },
      })
      if (end.complete) deck.settle(range)
      return { complete: end.complete, rows: widths.size }
    },
    cutList: (wanted) => cutLists.run(wanted),
    sizeIt: (wanted) => sizings.run(wanted),
    planTheRest: (wanted) => rests.run(wanted),
    close: async () => {
      await Promise.all([
        estimates.close(),
        comparisons.close(),
        cutLists.close(),
        sizings.close(),
        rests.close(),
      ])
    },
  }
}
