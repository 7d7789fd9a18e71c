import { CellEntryField, CellFault, onCellKey, useCellEntry } from '../../parts/cell-entry.tsx'
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
  const entry = useCellEntry()

  async function take(typed: string, back: boolean) {
    if (entry.closing.current) return
    const wrong = typed.trim() === text ? null : await onTake(typed)
    if (wrong !== null) return entry.setFault(wrong)
    entry.end()
    if (back) onLeave()
  }

  function act(key: string): boolean {
    if (key === 'Enter' || key === 'F2') entry.begin(text)
    else if (key === 'Delete' || key === 'Backspace') entry.begin('')
    else if (key.length === 1 && key !== ' ') entry.begin(key)
    else return false
    return true
  }

  return (
    <td
      {...cell}
      className={figures ? 'book-cell is-figures' : 'book-cell'}
      onKeyDown={(event) => onCellKey(event, act)}
      onClick={() => {
        if (entry.draft === null) entry.begin(text)
      }}
    >
      {entry.draft === null ? (
        <>
          <span className="unseen">{name} </span>
          <span className="line-value">
            {mark !== '' && <span aria-hidden="true">{mark}</span>}
            {text}
          </span>
        </>
      ) : (
        <CellEntryField
          entry={entry}
          name={name}
          shown={text}
          maxLength={200}
          onType={(typed) => {
            entry.setDraft(typed)
            entry.setFault(null)
          }}
          onEnter={(typed) => void take(typed, true)}
          onEscape={() => {
            entry.end()
            onLeave()
          }}
          onBlur={(typed) => void take(typed, false)}
        />
      )}
      <CellFault entry={entry} />
    </td>
  )
}
