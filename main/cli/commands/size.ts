import { writeJobText } from '../../../core/job/index.ts'
import { faultSentence } from '../../app/estimate-outcome.ts'
import { writeWhole } from '../../app/files.ts'
import type { Command } from '../arguments.ts'
import { checksReport } from '../checks-report.ts'
import { pricesUsed, readJobFile, readPrices } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { CAUTIONS, pricesHead } from '../report.ts'
import { sizingReport } from '../sizing-report.ts'

/** The cheapest sizes that pass, what they change, and the job sized so as a new file where one is asked for. */
export async function runSize(
  { job, prices, json, hold, write }: Extract<Command, { kind: 'size' }>,
  output: Output,
): Promise<ExitCode> {
  const file = readJobFile(job, output)
  const used = await readPrices(prices, file, output)
  if (file === null || used === null) return 2
  const { loadCalculations } = await import('../../app/calculations.ts')
  const result = (await loadCalculations()).sizeIt(file.statement, used.book, hold)
  if (!result.ok) {
    if (result.checks.length === 0) {
      output.warn(`${job}: ${result.message}\n${faultLines(job, result.faults)}`)
      for (const { message, fix } of result.priceFaults)
        output.warn(`${faultSentence({ path: '', message, fix })}\n`)
      return 2
    }
    if (json) output.say(`${JSON.stringify({ prices: pricesUsed(used), result }, null, 2)}\n`)
    else
      output.say(
        `${result.message}\n\nWhat the nearest one fails on\n${checksReport(result.checks)}\n${CAUTIONS}`,
      )
    return 1
  }
  const { sized } = result
  if (write !== null) {
    const written = writeWhole(write, writeJobText(sized.statement), 'create')
    if (!written.ok) {
      output.warn(`${written.error}\n`)
      return 2
    }
  }
  if (json) output.say(`${JSON.stringify({ prices: pricesUsed(used), result }, null, 2)}\n`)
  else output.say(`${pricesHead(used)}\n${sizingReport(sized)}\n${CAUTIONS}`)
  if (write !== null) output.warn(`Job: ${write}\n`)
  return sized.remaining.length + sized.byCalculation.length === 0 ? 0 : 1
}
