import { type RefObject, useEffect, useRef } from 'react'
import { useSession } from '../state/session-context.ts'

/** What a table gives to a spreadsheet and takes from one. */
export interface CellBlocks {
  copied(): { readonly text: string; readonly said: string }
  /** @param row, column of the cell that has the focus */
  paste(text: string, row: string | undefined, column: number): void
}

/** Copies a table for a spreadsheet and takes a block from one, while one of its cells has the focus. */
export function useCellClipboard(table: RefObject<HTMLElement | null>, blocks: CellBlocks): void {
  const session = useSession()
  const now = useRef(blocks)
  now.current = blocks
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
      const { text, said } = now.current.copied()
      event.clipboardData?.setData('text/plain', text)
      event.preventDefault()
      session.say(`${said} copied, as a spreadsheet takes them`)
    }
    function onPaste(event: ClipboardEvent) {
      const at = here()
      if (at === null || event.clipboardData === null) return
      event.preventDefault()
      now.current.paste(event.clipboardData.getData('text/plain'), at.dataset.row, Number(at.dataset.column))
    }
    document.addEventListener('copy', onCopy)
    document.addEventListener('paste', onPaste)
    return () => {
      document.removeEventListener('copy', onCopy)
      document.removeEventListener('paste', onPaste)
    }
  }, [session, table])
}
