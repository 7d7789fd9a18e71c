import { design } from '../../../core/design.ts'
import { needsAttention } from '../../app/estimate-outcome.ts'
import type { Command } from '../arguments.ts'
import { checksReport } from '../checks-report.ts'
import { readJobFile } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { CAUTIONS, sizeOf } from '../report.ts'

/** The structural checks of a job file; needs no prices. */
export function runCheck({ job, json }: Extract<Command, { kind: 'check' }>, output: Output): ExitCode {
  const file = readJobFile(job, output)
  if (file === null) return 2
  const designed = design(file.statement)
  if (!designed.ok) {
    output.warn(faultLines(job, designed.error))
    return 2
  }
  const { checks } = designed.value
  if (json) output.say(`${JSON.stringify({ checks }, null, 2)}\n`)
  else output.say(`${sizeOf(designed.value.job)}\n${checksReport(checks)}\n${CAUTIONS}`)
  return checks.some(needsAttention) ? 1 : 0
}
