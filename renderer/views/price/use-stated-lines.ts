import { useMemo } from 'react'
import {
  printStatedLines,
  readStatedLines,
  type StatedLine,
  statedValue,
  withStatedLine,
} from '../../../core/job/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'

const PATH = 'pricing.lines'

export interface StatedLines {
  /** by id of the line; null where what the job states of lines cannot be read */
  readonly lines: ReadonlyMap<string, StatedLine> | null
  /** states quantities or prices of lines as one step; null in a change puts back what was computed */
  state(changes: readonly (Partial<StatedLine> & Pick<StatedLine, 'line'>)[], label: string): void
  /** takes everything that is stated away */
  clear(label: string): void
}

/** What the present job states of lines by hand, and the ways to change it. */
export function useStatedLines(): StatedLines {
  const session = useSession()
  const stated = useJob((state) => statedValue(state.history.present, PATH))
  return useMemo(() => {
    const read = readStatedLines(typeof stated === 'string' ? stated : '')
    const readable = (stated === undefined || typeof stated === 'string') && read.ok
    return {
      lines: readable ? new Map(read.value.map((one) => [one.line, one])) : null,
      state(changes, label) {
        if (!readable) return
        const next = changes.reduce(
          (lines, { line, ...change }) => withStatedLine(lines, line, change),
          read.value,
        )
        const text = printStatedLines(next)
        session.state(PATH, text === '' ? undefined : text, label)
      },
      clear: (label) => session.state(PATH, undefined, label),
    }
  }, [session, stated])
}
