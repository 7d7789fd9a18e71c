import type { CompareRow } from '../../core/compare/index.ts'
import type { EstimateResult } from '../../core/estimate-types.ts'
import type { JobStatement } from '../../core/job/index.ts'
import { type CompareEnd, CompareRuns, type CompareWanted } from './compare-runs.ts'
import { contentKey } from './content-key.ts'
import { EstimateQueue, type EstimateWanted } from './estimate-queue.ts'
import { Recent } from './recent.ts'

/** The calculations, off the thread that serves the window: one worker for estimates, one for comparisons. */
export interface Pool {
  estimate(wanted: EstimateWanted): Promise<EstimateResult>
  /** Rows arrive by `onRow`, from the store of those already worked first. */
  compare(wanted: CompareWanted): Promise<CompareEnd>
  close(): Promise<void>
}

export interface PoolOptions {
  readonly workerPath: string
  /** how many estimates and how many comparisons are kept; an estimate is a few hundred kilobytes */
  readonly kept?: { readonly estimates: number; readonly comparisons: number }
}

export function createPool(options: PoolOptions): Pool {
  const kept = options.kept ?? { estimates: 8, comparisons: 8 }
  const estimates = new EstimateQueue(options.workerPath)
  const comparisons = new CompareRuns(options.workerPath)
  const results = new Recent<EstimateResult>(kept.estimates)
  const rowsOf = new Recent<readonly CompareRow[]>(kept.comparisons)

  return {
    estimate: async (wanted) => {
      const key = contentKey(wanted.statement, wanted.book)
      const known = results.get(key)
      if (known !== undefined) return known
      const result = await estimates.run(wanted)
      results.set(key, result)
      return result
    },
    compare: async (wanted) => {
      const key = contentKey(withoutWidth(wanted.statement), wanted.book, wanted.range)
      const known = rowsOf.get(key)
      if (known !== undefined) {
        comparisons.stop()
        for (const row of known) wanted.onRow(row)
        return { complete: true, rows: known.length }
      }
      const rows: CompareRow[] = []
      const end = await comparisons.run({
        ...wanted,
        onRow: (row) => {
          rows.push(row)
          wanted.onRow(row)
        },
      })
      if (end.complete) rowsOf.set(key, rows)
      return end
    },
    close: async () => {
      await Promise.all([estimates.close(), comparisons.close()])
    },
  }
}

/** A comparison over a range says the same of every width, so dragging the width needs no new one. */
function withoutWidth(statement: JobStatement): unknown {
  const { size, ...rest } = statement
  if (size === null || typeof size !== 'object' || Array.isArray(size)) return { ...rest, size }
  const { width: _set, ...others } = size as { readonly [key: string]: unknown }
  return { ...rest, size: others }
}
