import { type KeyboardEvent, useId, useRef, useState } from 'react'
import type { Line } from '../../../core/pricing/index.ts'
import type { GridCell } from '../../parts/use-grid.ts'
import { computedOf, type LineFigure, printFigure, readFigure } from './line-values.ts'

const NAMES = { thousandths: 'quantity', price: 'price' } as const

/**
 * A quantity or price of a line: shown with what was computed where it is stated by hand, and typed over in place. Enter
 * or F2 begins, and so does a figure; Enter takes the text, Escape leaves it, Delete puts the computed value back.
 */
export function FigureCell({
  line,
  figure,
  stated,
  locked,
  cell,
  onState,
  onLeave,
}: {
  readonly line: Line
  readonly figure: LineFigure
  /** what the job states by hand, in the figure's own unit; null: as computed */
  readonly stated: number | null
  /** nothing can be stated now */
  readonly locked: boolean
  readonly cell: GridCell
  onState(value: number | null): void
  /** the entry is closed: the focus goes back to the cell */
  onLeave(): void
}) {
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const closing = useRef(false)
  const computed = computedOf(line)[figure]
  const shown = printFigure(figure, stated ?? computed)
  const name = `${line.label}: ${NAMES[figure]}`

  function begin(text: string) {
    if (locked) return
    closing.current = false
    setFault(null)
    setDraft(text)
  }

  function end() {
    closing.current = true
    setDraft(null)
    setFault(null)
  }

  /** Takes the text; one that cannot be taken stays, with what is wrong beside it. */
  function take(text: string): boolean {
    if (closing.current) return true
    if (text.trim() === shown) {
      end()
      return true
    }
    const read = readFigure(line, figure, text)
    if (!read.ok) {
      setFault(read.error)
      return false
    }
    end()
    onState(read.value[figure] ?? null)
    return true
  }

  function onCellKey(event: KeyboardEvent<HTMLElement>) {
    if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter' || event.key === 'F2') begin(shown)
    else if (/^[\d.$]$/.test(event.key)) begin(event.key)
    else if ((event.key === 'Delete' || event.key === 'Backspace') && stated !== null && !locked)
      onState(null)
    else return
    event.preventDefault()
    event.stopPropagation()
  }

  function onEntryKey(event: KeyboardEvent<HTMLInputElement>) {
    if (event.key !== 'Enter' && event.key !== 'Escape') return
    event.preventDefault()
    event.stopPropagation()
    if (event.key === 'Escape') end()
    else if (!take(event.currentTarget.value)) return
    onLeave()
  }

  return (
    <td
      {...cell}
      className={stated === null ? 'line-cell' : 'line-cell is-stated'}
      onKeyDown={onCellKey}
      onClick={() => {
        if (draft === null) begin(shown)
      }}
    >
      {draft === null ? (
        <>
          <span className="unseen">{name} </span>
          <span className="line-value">
            {shown}
            {figure === 'thousandths' && ` ${line.unit}`}
          </span>
          {stated !== null && <span className="unseen"> stated by hand, </span>}
        </>
      ) : (
        <input
          // biome-ignore lint/a11y/noAutofocus: the entry stands in the place of the cell that had the focus
          autoFocus
          className="line-entry"
          type="text"
          inputMode="decimal"
          value={draft}
          aria-label={name}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          spellCheck={false}
          autoComplete="off"
          onFocus={(event) => {
            if (draft === shown) event.target.select()
            event.stopPropagation()
          }}
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={onEntryKey}
          onBlur={(event) => take(event.target.value)}
          onClick={(event) => event.stopPropagation()}
        />
      )}
      {stated !== null && draft === null && (
        <span className="line-computed">
          {figure === 'price' ? 'in the book ' : 'computed '}
          {printFigure(figure, computed)}
          <button
            type="button"
            className="line-back"
            tabIndex={-1}
            disabled={locked}
            aria-label={`back to ${printFigure(figure, computed)}`}
            title="Back to the computed value"
            onClick={(event) => {
              event.stopPropagation()
              onState(null)
              onLeave()
            }}
          >
            ↺
          </button>
        </span>
      )}
      {fault !== null && (
        <span id={`${id}-fault`} className="line-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </span>
      )}
    </td>
  )
}
