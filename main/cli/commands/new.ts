import { newJobText } from '../../../core/job/index.ts'
import { writeWhole } from '../../app/files.ts'
import type { Command } from '../arguments.ts'
import type { ExitCode, Output } from '../output.ts'

/** A starting job with every field explained, in a file that is not there yet. */
export function runNew({ file }: Extract<Command, { kind: 'new' }>, output: Output): ExitCode {
  const written = writeWhole(file, newJobText(), 'create')
  if (!written.ok) {
    output.warn(`${written.error}\n`)
    return 2
  }
  output.say(`${file} is a starting job: change what you know, then run kerfwright estimate ${file}\n`)
  return 0
}
