import type { RefObject } from 'react'
import type { StatedLine } from '../../../core/job/index.ts'
import type { Line } from '../../../core/pricing/index.ts'
import { useSession } from '../../state/session-context.ts'
import { useCellClipboard } from '../use-cell-clipboard.ts'
import { type BlockChange, linesAsText, readBlock } from './line-blocks.ts'
import type { StatedLines } from './use-stated-lines.ts'

/** Copies the lines for a spreadsheet, and takes a block of figures from one; all of it or nothing, as one step. */
export function useBlocks(
  table: RefObject<HTMLElement | null>,
  lines: readonly Line[],
  stated: StatedLines,
): void {
  const session = useSession()
  useCellClipboard(table, {
    copied: () => ({ text: linesAsText(lines), said: `${lines.length} lines` }),
    paste(text, row, column) {
      const from = lines.findIndex(({ id }) => id === row)
      const read = readBlock(text, lines.slice(Math.max(0, from)), column)
      if (!read.ok) return session.say(read.error)
      stated.state(changesOf(read.value), `${read.value.length} lines pasted`)
    },
  })
}

function changesOf(
  block: readonly BlockChange[],
): readonly (Partial<StatedLine> & Pick<StatedLine, 'line'>)[] {
  return block.map(({ line, change }) => ({ line, ...change }))
}
