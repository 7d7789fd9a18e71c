import { type KeyboardEvent, type RefObject, useId, useRef, useState } from 'react'

export interface CellEntry {
  /** what is typed; null while nothing is */
  readonly draft: string | null
  /** what is wrong with it, and what would be right */
  readonly fault: string | null
  readonly faultId: string
  /** the entry is being closed: what its loss of the focus tells is not taken again */
  readonly closing: RefObject<boolean>
  begin(typed: string): void
  end(): void
  setDraft(typed: string): void
  setFault(fault: string | null): void
}

/** The state of a cell that is typed over in place. */
export function useCellEntry(): CellEntry {
  const faultId = `${useId()}-fault`
  const [draft, setDraft] = useState<string | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const closing = useRef(false)
  return {
    draft,
    fault,
    faultId,
    closing,
    begin(typed) {
      closing.current = false
      setFault(null)
      setDraft(typed)
    },
    end() {
      closing.current = true
      setDraft(null)
      setFault(null)
    },
    setDraft,
    setFault,
  }
}

/**
 * Runs what a key asks of a cell, and keeps the key from the table around it.
 * @param act whether the key asks for something here
 */
export function onCellKey(event: KeyboardEvent<HTMLElement>, act: (key: string) => boolean): void {
  if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey) return
  if (!act(event.key)) return
  event.preventDefault()
  event.stopPropagation()
}

/** The text field that stands in a cell while it is typed over; Enter takes the text, Escape leaves it. */
export function CellEntryField({
  entry: { draft, fault, faultId },
  name,
  shown,
  inputMode,
  maxLength,
  onType,
  onEnter,
  onEscape,
  onBlur,
}: {
  readonly entry: CellEntry
  readonly name: string
  /** what the cell says when nothing is typed: chosen whole, to be typed over */
  readonly shown: string
  readonly inputMode?: 'decimal'
  readonly maxLength?: number
  onType(typed: string): void
  onEnter(typed: string): void
  onEscape(): void
  onBlur(typed: string): void
}) {
  return (
    <input
      // biome-ignore lint/a11y/noAutofocus: the entry stands in the place of the cell that had the focus
      autoFocus
      className="line-entry"
      type="text"
      inputMode={inputMode}
      maxLength={maxLength}
      value={draft ?? ''}
      aria-label={name}
      aria-invalid={fault !== null}
      aria-describedby={fault === null ? undefined : faultId}
      spellCheck={false}
      autoComplete="off"
      onFocus={(event) => {
        if (draft === shown) event.target.select()
        event.stopPropagation()
      }}
      onChange={(event) => onType(event.target.value)}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== 'Escape') return
        event.preventDefault()
        event.stopPropagation()
        if (event.key === 'Enter') onEnter(event.currentTarget.value)
        else onEscape()
      }}
      onBlur={(event) => onBlur(event.target.value)}
      onClick={(event) => event.stopPropagation()}
    />
  )
}

/** What is wrong with the text that is typed, under it. */
export function CellFault({ entry: { fault, faultId } }: { readonly entry: CellEntry }) {
  if (fault === null) return null
  return (
    <span id={faultId} className="line-fault" role="alert">
      <span aria-hidden="true">▲</span> {fault}
    </span>
  )
}
