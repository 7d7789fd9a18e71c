import type { Line } from '../../../core/pricing/index.ts'
import { CellEntryField, CellFault, onCellKey, useCellEntry } from '../../parts/cell-entry.tsx'
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
  const entry = useCellEntry()
  const computed = computedOf(line)[figure]
  const shown = printFigure(figure, stated ?? computed)
  const name = `${line.label}: ${NAMES[figure]}`

  function begin(text: string) {
    if (!locked) entry.begin(text)
  }

  /** Takes the text; one that cannot be taken stays, with what is wrong beside it. */
  function take(text: string): boolean {
    if (entry.closing.current) return true
    if (text.trim() === shown) {
      entry.end()
      return true
    }
    const read = readFigure(line, figure, text)
    if (!read.ok) {
      entry.setFault(read.error)
      return false
    }
    entry.end()
    onState(read.value[figure] ?? null)
    return true
  }

  function act(key: string): boolean {
    if (key === 'Enter' || key === 'F2') begin(shown)
    else if (/^[\d.$]$/.test(key)) begin(key)
    else if ((key === 'Delete' || key === 'Backspace') && stated !== null && !locked) onState(null)
    else return false
    return true
  }

  return (
    <td
      {...cell}
      className={stated === null ? 'line-cell' : 'line-cell is-stated'}
      onKeyDown={(event) => onCellKey(event, act)}
      onClick={() => {
        if (entry.draft === null) begin(shown)
      }}
    >
      {entry.draft === null ? (
        <>
          <span className="unseen">{name} </span>
          <span className="line-value">
            {shown}
            {figure === 'thousandths' && ` ${line.unit}`}
          </span>
          {stated !== null && <span className="unseen"> stated by hand, </span>}
        </>
      ) : (
        <CellEntryField
          entry={entry}
          name={name}
          shown={shown}
          inputMode="decimal"
          onType={entry.setDraft}
          onEnter={(text) => {
            if (take(text)) onLeave()
          }}
          onEscape={() => {
            entry.end()
            onLeave()
          }}
          onBlur={take}
        />
      )}
      {stated !== null && entry.draft === null && (
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
      <CellFault entry={entry} />
    </td>
  )
}
