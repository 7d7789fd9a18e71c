import type { FoundOption, GroundReport } from '../../../core/ground/index.ts'
import { type JobStatement, setField, writeJobText } from '../../../core/job/index.ts'
import { needsAttention } from '../../app/estimate-outcome.ts'
import { writeWhole } from '../../app/files.ts'
import type { Command } from '../arguments.ts'
import { groundText } from '../ground-report.ts'
import { pricesUsed, readJobFile, readPrices } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { CAUTIONS, headOf } from '../report.ts'

/** Everything in the ground of a job; a hole found off its place, and the job with what is done about it. */
export async function runGround(
  { job, prices, json, found, choose }: Extract<Command, { kind: 'ground' }>,
  output: Output,
): Promise<ExitCode> {
  const file = readJobFile(job, output)
  const used = await readPrices(prices, file, output)
  if (file === null || used === null) return 2
  const { loadCalculations } = await import('../../app/calculations.ts')
  const calculations = await loadCalculations()
  const result = calculations.ground(file.statement, used.book, found === null ? {} : { found })
  if (!result.ok) {
    output.warn(faultLines(job, result.error))
    return 2
  }
  const { estimate, ground } = result.value
  if (found !== null && ground.found?.options.length === 0) {
    output.warn(`--found: there is no hole ${found.post}; the plan has ${estimate.frame.footings.length}.\n`)
    return 2
  }
  if (choose !== null) {
    const wrong = writeChosen(file.statement, ground, choose)
    if (wrong !== null) {
      output.warn(`${wrong}\n`)
      return 2
    }
  }
  if (json) output.say(`${JSON.stringify({ prices: pricesUsed(used), ground }, null, 2)}\n`)
  else output.say(`${headOf(estimate.job, used)}\n${groundText(estimate, ground)}\n${CAUTIONS}`)
  if (choose !== null) output.warn(`Job: ${choose.write}\n`)
  const below = new Set([...estimate.frame.footings, ...estimate.frame.posts].map(({ id }) => id))
  const own = estimate.checks.filter(({ subjects }) => subjects.some((id) => below.has(id)))
  return own.some(needsAttention) ? 1 : 0
}

/** Writes the job with the chosen way; a sentence where that cannot be done. */
function writeChosen(
  statement: JobStatement,
  { found }: GroundReport,
  { way, write }: { readonly way: FoundOption['kind']; readonly write: string },
): string | null {
  const option = found?.options.find(({ kind }) => kind === way)
  if (option === undefined || option.edit === null)
    return `--choose: "${way}" cannot be done. ${option?.cannot ?? ''}`
  const edited = Object.entries(option.edit).reduce(
    (made, [path, text]) => setField(made, path, text),
    statement,
  )
  const written = writeWhole(write, writeJobText(edited), 'create')
  return written.ok ? null : written.error
}
