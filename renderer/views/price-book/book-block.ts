import { writeDelimited } from '../../../core/cut-list/index.ts'
import type { BookEdit } from '../../../core/pricing/index.ts'
import { fail, ok, type Result } from '../../../core/units/index.ts'
import { type BookLine, type BookTable, fieldOf } from './book-table.ts'

/** The lines that are shown with their headings, tab by tab as spreadsheets take them. */
export function bookAsText({ columns }: Pick<BookTable, 'columns'>, lines: readonly BookLine[]): string {
  return writeDelimited([columns.map(({ heading }) => heading), ...lines.map(({ cells }) => cells)], '\t')
}

/**
 * Reads a block of cells pasted at a cell: a row for each line from there on, a column for each column from there on.
 * Empty cells leave theirs alone; a cell that is told only may be pasted over by what it says already.
 * @param lines from the line with the focus on
 */
export function readBookBlock(
  text: string,
  { columns }: Pick<BookTable, 'columns'>,
  lines: readonly BookLine[],
  column: number,
): Result<readonly Extract<BookEdit, { kind: 'set' }>[], string> {
  const all = text
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((row) => row.split('\t'))
  // what was copied here begins with its headings
  const rows = all[0]?.every((cell, at) => cell.trim() === columns[column + at]?.heading) ? all.slice(1) : all
  if (rows.length > lines.length)
    return fail(
      `Nothing was pasted: the block has ${rows.length} rows, and ${lines.length} rows follow here.`,
    )
  const edits: Extract<BookEdit, { kind: 'set' }>[] = []
  for (const [at, row] of rows.entries()) {
    const line = lines[at]
    for (const [place, cell] of row.entries()) {
      const to = columns[column + place]
      const typed = cell.trim()
      if (line === undefined || typed === '') continue
      if (to === undefined) return fail(`Nothing was pasted: the block is wider than the table from here.`)
      if (typed === line.cells[column + place]) continue
      const field = fieldOf(line, to)
      if (field === null)
        return fail(
          `Nothing was pasted. Row ${at + 1}, ${line.label}: “${to.heading}” is not written over here.`,
        )
      edits.push({ kind: 'set', row: line.row, field, text: typed })
    }
  }
  return edits.length === 0 ? fail('Nothing was pasted: the block says what stands here already.') : ok(edits)
}
