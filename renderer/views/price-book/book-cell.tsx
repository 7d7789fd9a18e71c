import { type KeyboardEvent, useId, useRef, useState } from 'react'
import type { GridCell } from '../../parts/use-grid.ts'

/**
 * A cell that is typed over in place. Enter or F2 begins, and so does a letter or a figure; Enter takes the text, Escape
 * leaves it. A text that cannot be taken stays, with what is wrong and what would be right beside it.
 */
export function BookCell({
  name,
  text,
  figures,
  mark,
  cell,
  onTake,
  onLeave,
}: {
  readonly name: string
  readonly text: string
  readonly figures: boolean
  /** stands before the text, seen only */
  readonly mark: string
  readonly cell: GridCell
  /** null: taken; else what is wrong */
  onTake(typed: string): Promise<string | null>
  /** the entry is closed: the focus goes back to the cell */
  onLeave(): void
}) {
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const closing = useRef(false)

  function begin(typed: string) {
    closing.current = false
    setFault(null)
    setDraft(typed)
  }

  function end() {
    closing.current = true
    setDraft(null)
    setFault(null)
  }

  async function take(typed: string, back: boolean) {
    if (closing.current) return
    if (typed.trim() === text) {
      end()
      if (back) onLeave()
      return
    }
    const wrong = await onTake(typed)
    if (wrong !== null) return setFault(wrong)
    end()
    if (back) onLeave()
  }

  function onCellKey(event: KeyboardEvent<HTMLElement>) {
    if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter' || event.key === 'F2') begin(text)
    else if (event.key === 'Delete' || event.key === 'Backspace') begin('')
    else if (event.key.length === 1 && event.key !== ' ') begin(event.key)
    else return
    event.preventDefault()
    event.stopPropagation()
  }

  function onEntryKey(event: KeyboardEvent<HTMLInputElement>) {
    if (event.key !== 'Enter' && event.key !== 'Escape') return
    event.preventDefault()
    event.stopPropagation()
    if (event.key === 'Enter') return void take(event.currentTarget.value, true)
    end()
    onLeave()
  }

  return (
    <td
      {...cell}
      className={figures ? 'book-cell is-figures' : 'book-cell'}
      onKeyDown={onCellKey}
      onClick={() => {
        if (draft === null) begin(text)
      }}
    >
      {draft === null ? (
        <>
          <span className="unseen">{name} </span>
          <span className="line-value">
            {mark !== '' && <span aria-hidden="true">{mark}</span>}
            {text}
          </span>
        </>
      ) : (
        <input
          // biome-ignore lint/a11y/noAutofocus: the entry stands in the place of the cell that had the focus
          autoFocus
          className="line-entry"
          type="text"
          maxLength={200}
          value={draft}
          aria-label={name}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          spellCheck={false}
          autoComplete="off"
          onFocus={(event) => {
            if (draft === text) event.target.select()
            event.stopPropagation()
          }}
          onChange={(event) => {
            setDraft(event.target.value)
            setFault(null)
          }}
          onKeyDown={onEntryKey}
          onBlur={(event) => void take(event.target.value, false)}
          onClick={(event) => event.stopPropagation()}
        />
      )}
      {fault !== null && (
        <span id={`${id}-fault`} className="line-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </span>
      )}
    </td>
  )
}
