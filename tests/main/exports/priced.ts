import { estimate } from '../../../core/estimate.ts'
import { DEMO_JOB, type JobStatement } from '../../../core/job/index.ts'
import { type PriceBook, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import type { PricedEstimate } from '../../../main/exports/workbook/index.ts'
import { loadEngine } from '../../../main/workers/lp/index.ts'

/** The demo job, with some of its fields changed, priced by a book. */
export async function priced(
  changes: JobStatement = {},
  book: PriceBook = SAMPLE_BOOK,
): Promise<PricedEstimate> {
  const result = estimate({ ...DEMO_JOB, ...changes }, book, await loadEngine())
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  if (result.estimate.pricing === null) throw new Error(JSON.stringify(result.estimate.priceFaults))
  return result.estimate as PricedEstimate
}
