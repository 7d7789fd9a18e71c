import { type KeyboardEvent, type RefObject, useState } from 'react'

/** A cell by the key of its row and the place of its column. */
export interface GridPlace {
  readonly row: string
  readonly column: number
}

/** What a cell, or the one control in it, carries so that the table has a single Tab stop. */
export interface GridCell {
  readonly tabIndex: 0 | -1
  readonly 'data-row': string
  readonly 'data-column': number
  onFocus(): void
}

export interface Grid {
  cell(row: string, column: number): GridCell
  onKeyDown(event: KeyboardEvent<HTMLElement>): void
  /** puts the focus on a cell that is in the page */
  focus(place: GridPlace): void
}

/**
 * The keys of a table whose cells can be walked: arrows by one, Home and End along the row, with Ctrl to the first and
 * last cell. Only the cell where one stands is a Tab stop. Keys inside a text entry are the entry's own.
 * @param startRow where Tab enters, where that is not the first row: headings that can be chosen are a row too
 */
export function useGrid(
  table: RefObject<HTMLElement | null>,
  rows: readonly string[],
  columns: number,
  first: number,
  startRow: string = rows[0] ?? '',
): Grid {
  const [place, setPlace] = useState<GridPlace | null>(null)
  const here = place !== null && rows.includes(place.row) ? place : { row: startRow, column: first }

  function focus({ row, column }: GridPlace) {
    const cells = table.current?.querySelectorAll<HTMLElement>(`[data-column="${column}"]`) ?? []
    for (const cell of cells) {
      if (cell.dataset.row !== row) continue
      cell.focus()
      return
    }
  }

  return {
    focus,
    cell: (row, column) => ({
      tabIndex: row === here.row && column === here.column ? 0 : -1,
      'data-row': row,
      'data-column': column,
      onFocus: () => setPlace({ row, column }),
    }),
    onKeyDown(event) {
      if (event.target instanceof HTMLInputElement || event.altKey) return
      const next = stepFrom(here, event, rows, columns)
      if (next === null) return
      event.preventDefault()
      event.stopPropagation()
      focus(next)
    },
  }
}

type Step = Pick<KeyboardEvent<HTMLElement>, 'key' | 'ctrlKey' | 'metaKey'>

/** Where a key leads from a cell; null where it is no key of the grid. */
export function stepFrom(
  { row, column }: GridPlace,
  { key, ctrlKey, metaKey }: Step,
  rows: readonly string[],
  columns: number,
): GridPlace | null {
  const at = rows.indexOf(row)
  const whole = ctrlKey || metaKey
  const to = (line: number, place: number): GridPlace => ({
    row: rows[Math.min(rows.length - 1, Math.max(0, line))] ?? row,
    column: Math.min(columns - 1, Math.max(0, place)),
  })
  if (key === 'Home') return whole ? to(0, 0) : to(at, 0)
  if (key === 'End') return whole ? to(rows.length - 1, columns - 1) : to(at, columns - 1)
  if (whole) return null
  if (key === 'ArrowDown') return to(at + 1, column)
  if (key === 'ArrowUp') return to(at - 1, column)
  if (key === 'PageDown') return to(at + 10, column)
  if (key === 'PageUp') return to(at - 10, column)
  if (key === 'ArrowRight') return to(at, column + 1)
  return key === 'ArrowLeft' ? to(at, column - 1) : null
}
