import type { CompareRow } from '../../core/compare/index.ts'
import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { JointReason } from '../../core/cutting/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { GroundResult } from '../../core/ground/index.ts'
import type { FieldPath, Found, JobStatement } from '../../core/job/index.ts'
import type { RestAnswer, RestRequest } from '../../core/plan-the-rest.ts'
import type { OffcutsOnHand, PriceBook } from '../../core/pricing/index.ts'
import type { SizingResult } from '../../core/sizing/index.ts'
import type { Ticks } from '../../core/units/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'
import { type CompareEnd, CompareRuns, type CompareWanted, type SizesWanted } from './compare-runs.ts'
import { contentKey } from './content-key.ts'
import { EstimateQueue, type EstimateWanted } from './estimate-queue.ts'
import { KeptRows, stepsOf } from './kept-rows.ts'
import { LatestRun, type Task } from './latest-run.ts'
import { Recent } from './recent.ts'

/** A job, the prices that it is worked out by, and the offcuts on hand. */
export interface DeckWanted {
  readonly statement: JobStatement
  readonly book: PriceBook
  readonly rack: readonly OffcutsOnHand[]
}

export interface GroundWanted extends DeckWanted {
  readonly found: Found | null
}

export interface WishWanted extends DeckWanted {
  readonly wished: JobStatement
}

export interface JointsWanted extends DeckWanted {
  readonly runId: string
  readonly at: readonly Ticks[]
}

export interface CutListWanted {
  readonly request: CutListRequest
  readonly book: PriceBook
}

export interface SizingWanted {
  readonly statement: JobStatement
  readonly book: PriceBook
  readonly held: readonly FieldPath[]
}

export interface RestWanted extends DeckWanted {
  readonly rest: RestRequest
}

/** The calculations, off the thread that serves the window: each kind has a worker of its own. */
export interface Pool {
  estimate(wanted: EstimateWanted): Promise<EstimateResult>
  /** from first plans, beside the whole one that takes its time */
  firstEstimate(wanted: DeckWanted): Promise<EstimateResult>
  /**
   * Rows arrive by `onRow`: those already worked at once, the others nearest to the deck's own width first; of two rows
   * of one width the later is the better. Answers how many widths were told.
   */
  compare(wanted: CompareWanted): Promise<CompareEnd>
  /** rows of sizes, nearest to the deck's own first */
  compareSizes(wanted: SizesWanted): Promise<CompareEnd>
  cutList(wanted: CutListWanted, task?: Task): Promise<CutListAnswer>
  sizeIt(wanted: SizingWanted, task?: Task): Promise<SizingResult>
  planTheRest(wanted: RestWanted, task?: Task): Promise<RestAnswer>
  ground(wanted: GroundWanted): Promise<GroundResult>
  /** the same for a paper: an edit in the window does not stop it */
  groundSheet(wanted: GroundWanted): Promise<GroundResult>
  wishPrice(wanted: WishWanted, task?: Task): Promise<WishPrice>
  explainJoints(wanted: JointsWanted, task?: Task): Promise<readonly JointReason[]>
  /** ends a task; its answer is what it has by then. @returns whether it ran */
  stop(task: string): boolean
  close(): Promise<void>
}

/** Answers kept: an estimate is a few hundred kilobytes, the rows of a deck somewhat less. */
const ESTIMATES_KEPT = 8
const DECKS_KEPT = 8

/** @param options patience: how long, in ms, an estimate may keep a newer edit waiting before it is stopped */
export function createPool(options: { readonly workerPath: string; readonly patience?: number }): Pool {
  const estimates = new EstimateQueue(options.workerPath, options.patience)
  // the tape asks at every edit, and the plans its worker knows are half of an answer
  const comparisons = new CompareRuns(options.workerPath, Number.POSITIVE_INFINITY)
  const sizes = new CompareRuns(options.workerPath)
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
  const groundRun = () =>
    new LatestRun<GroundWanted, GroundResult>({
      ...options,
      request: (id, wanted) => ({ kind: 'ground', id, ...wanted }),
      answer: (answer) => (answer.kind === 'ground' ? { value: answer.result } : null),
    })
  const grounds = groundRun()
  const groundSheets = groundRun()
  const wishes = new LatestRun<WishWanted, WishPrice>({
    ...options,
    request: (id, wanted) => ({ kind: 'wish', id, ...wanted }),
    answer: (answer) => (answer.kind === 'wish' ? { value: answer.price } : null),
  })
  const joints = new LatestRun<JointsWanted, readonly JointReason[]>({
    ...options,
    request: (id, wanted) => ({ kind: 'joints', id, ...wanted }),
    answer: (answer) => (answer.kind === 'joints' ? { value: answer.reasons } : null),
  })
  const firsts = new LatestRun<DeckWanted, EstimateResult>({
    ...options,
    request: (id, wanted) => ({ kind: 'estimate', id, ...wanted, quick: true }),
    answer: (answer) => (answer.kind === 'estimate' ? { value: answer.result } : null),
  })
  const latest = [firsts, cutLists, sizings, rests, grounds, groundSheets, wishes, joints]
  const results = new Recent<EstimateResult>(ESTIMATES_KEPT)
  const kept = new KeptRows(DECKS_KEPT)

  return {
    estimate: async (wanted) => {
      const key = contentKey(wanted.statement, wanted.book, wanted.rack ?? [])
      const known = results.get(key)
      if (known !== undefined) return known
      const result = await estimates.run(wanted)
      if (!isStopped(result)) results.set(key, result)
      return result
    },
    firstEstimate: (wanted) => firsts.run(wanted),
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
    compareSizes: (wanted) => sizes.run(wanted),
    cutList: (wanted, task) => cutLists.run(wanted, task),
    sizeIt: (wanted, task) => sizings.run(wanted, task),
    planTheRest: (wanted, task) => rests.run(wanted, task),
    ground: (wanted) => grounds.run(wanted),
    groundSheet: (wanted) => groundSheets.run(wanted),
    wishPrice: (wanted, task) => wishes.run(wanted, task),
    explainJoints: (wanted, task) => joints.run(wanted, task),
    stop: (task) =>
      estimates.stop(task) ||
      comparisons.stopTask(task) ||
      sizes.stopTask(task) ||
      latest.some((run) => run.stop(task)),
    close: async () => {
      await Promise.all([
        estimates.close(),
        comparisons.close(),
        sizes.close(),
        ...latest.map((run) => run.close()),
      ])
    },
  }
}

/** A person ended it: asked for again, it is worked out again. */
function isStopped(result: EstimateResult): boolean {
  return result.ok && result.estimate.plans.some(({ plan }) => plan.status === 'stopped')
}
