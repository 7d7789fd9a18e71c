import { bestNeighbours, explainRows, neighbourMessage } from '../../../core/compare/index.ts'
import { design } from '../../../core/design.ts'
import type { Command } from '../arguments.ts'
import { compareReport } from '../compare-report.ts'
import { pricesUsed, readJobFile, readPrices } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { headOf } from '../report.ts'
import { wrap } from '../text-table.ts'

/** The same deck at each width of a range, narrowest first, and the best bargains near its own. */
export async function runCompare(
  { job, prices, json, range }: Extract<Command, { kind: 'compare' }>,
  output: Output,
): Promise<ExitCode> {
  const file = readJobFile(job, output)
  const used = await readPrices(prices, file, output)
  if (file === null || used === null) return 2
  const { statement } = file
  const designed = design(statement)
  if (!designed.ok) {
    output.warn(faultLines(job, designed.error))
    return 2
  }
  const { loadCalculations } = await import('../../app/calculations.ts')
  const rows = explainRows([...(await loadCalculations()).compareWidths(statement, used.book, range)])
  if (rows.every((row) => row.fault !== null)) {
    for (const row of new Set(rows.map(({ fault }) => fault))) output.warn(`${job}: ${row}\n`)
    return 2
  }
  if (json) output.say(`${JSON.stringify({ prices: pricesUsed(used), rows }, null, 2)}\n`)
  else {
    const { size } = designed.value.job
    const own = rows.find((row) => row.width === size.width && row.fault === null)
    const better = own === undefined ? [] : bestNeighbours(rows, own)
    const advice = better.flatMap((row) => wrap(neighbourMessage(row, own ?? row), 106))
    output.say(`${headOf(designed.value.job, used)}\n${compareReport(rows)}`)
    if (advice.length > 0)
      output.say(`\nNear the width of the job\n${advice.map((line) => `  ${line}\n`).join('')}`)
  }
  return rows.some((row) => row.fault !== null || row.failing > 0) ? 1 : 0
}
