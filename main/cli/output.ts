import type { Fault } from '../../core/job/index.ts'
import { faultSentence } from '../app/estimate-outcome.ts'
import { printable } from './text-table.ts'

/** Where a command writes; a test gives its own. */
export interface Output {
  /** the result */
  say(text: string): void
  /** faults and remarks */
  warn(text: string): void
}

export type ExitCode = 0 | 1 | 2

/** Faults as compilers write them, file:line:column first, so that editors can jump there. */
export function faultLines(file: string, faults: readonly Fault[]): string {
  return faults
    .map((fault) => {
      const place = fault.line === undefined ? '' : `:${fault.line}:${fault.column ?? 1}`
      return `${printable(`${file}${place}: ${faultSentence(fault)}`)}\n`
    })
    .join('')
}
