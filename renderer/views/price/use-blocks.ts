import { type RefObject, useEffect, useRef } from 'react'
import type { StatedLine } from '../../../core/job/index.ts'
import type { Line } from '../../../core/pricing/index.ts'
import { useSession } from '../../state/session-context.ts'
import { type BlockChange, linesAsText, readBlock } from './line-blocks.ts'
import type { StatedLines } from './use-stated-lines.ts'

/** Copies the lines for a spreadsheet, and takes a block of figures from one; all of it or nothing, as one step. */
export function useBlocks(
  table: RefObject<HTMLElement | null>,
  lines: readonly Line[],
  stated: StatedLines,
): void {
  const session = useSession()
  const now = useRef({ lines, stated })
  now.current = { lines, stated }
  useEffect(() => {
    /** The cell with the focus, unless a text entry has it. */
    const here = () => {
      const at = document.activeElement
      return at instanceof HTMLElement && !(at instanceof HTMLInputElement) && table.current?.contains(at)
        ? at
        : null
    }
    function onCopy(event: ClipboardEvent) {
      if (here() === null || document.getSelection()?.isCollapsed === false) return
      event.clipboardData?.setData('text/plain', linesAsText(now.current.lines))
      event.preventDefault()
      session.say(`${now.current.lines.length} lines copied, as a spreadsheet takes them`)
    }
    function onPaste(event: ClipboardEvent) {
      const at = here()
      if (at === null || event.clipboardData === null) return
      event.preventDefault()
      const from = now.current.lines.findIndex(({ id }) => id === at.dataset.row)
      const read = readBlock(
        event.clipboardData.getData('text/plain'),
        now.current.lines.slice(Math.max(0, from)),
        Number(at.dataset.column),
      )
      if (!read.ok) return session.say(read.error)
      now.current.stated.state(changesOf(read.value), `${read.value.length} lines pasted`)
    }
    document.addEventListener('copy', onCopy)
    document.addEventListener('paste', onPaste)
    return () => {
      document.removeEventListener('copy', onCopy)
      document.removeEventListener('paste', onPaste)
    }
  }, [session, table])
}

function changesOf(
  block: readonly BlockChange[],
): readonly (Partial<StatedLine> & Pick<StatedLine, 'line'>)[] {
  return block.map(({ line, change }) => ({ line, ...change }))
}
