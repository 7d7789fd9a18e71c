import { costJob, heldAgainst, isBegun } from '../../../core/costing/index.ts'
import type { PriceBook } from '../../../core/pricing/index.ts'
import { isPriced, needsAttention, reasonsForNoPrice } from '../../app/estimate-outcome.ts'
import { writeWhole } from '../../app/files.ts'
import type { PricedEstimate } from '../../app/workbook.ts'
import type { Command } from '../arguments.ts'
import { pricesUsed, readJobFile, readPrices } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { estimateReport } from '../report.ts'
import { printable } from '../text-table.ts'

/** What the job took so far, where it is begun. */
function costingOf(estimate: PricedEstimate, book: PriceBook) {
  const { job } = estimate
  return isBegun(job) ? { costing: costJob(job, heldAgainst(estimate, book)) } : {}
}

/** The whole estimate of a job file, as text or JSON, and as a workbook where one is asked for. */
export async function runEstimate(
  { job, prices, json, joints, xlsx }: Extract<Command, { kind: 'estimate' }>,
  output: Output,
): Promise<ExitCode> {
  const file = readJobFile(job, output)
  const used = await readPrices(prices, file, output)
  if (file === null || used === null) return 2
  const { book } = used
  const { loadCalculations } = await import('../../app/calculations.ts')
  const calculations = await loadCalculations()
  const result = calculations.estimate(file.statement, book)
  if (!result.ok) {
    output.warn(faultLines(job, result.faults))
    return 2
  }
  const { estimate } = result
  if (!isPriced(estimate)) {
    const at = used.path ?? `${job}, with the sample prices`
    for (const reason of reasonsForNoPrice(estimate)) output.warn(`${printable(`${at}: ${reason}`)}\n`)
    return 2
  }
  if (xlsx !== null) {
    const { makeWorkbook } = await import('../../app/workbook.ts')
    const written = writeWhole(
      xlsx,
      await makeWorkbook(estimate, book, calculations.tubes(estimate, book)),
      'replace',
    )
    if (!written.ok) {
      output.warn(`${written.error}\n`)
      return 2
    }
  }
  output.say(
    json
      ? `${JSON.stringify({ prices: pricesUsed(used), estimate, ...costingOf(estimate, book) }, null, 2)}\n`
      : estimateReport(
          estimate,
          used,
          joints ? calculations.framingJoints(estimate, book) : [],
          calculations.wishPrices(file.statement, estimate, book),
        ),
  )
  if (xlsx !== null) output.warn(`Workbook: ${xlsx}\n`)
  return estimate.checks.some(needsAttention) ? 1 : 0
}
