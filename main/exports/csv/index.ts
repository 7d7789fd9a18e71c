import { writeDelimited } from '../../../core/cut-list/index.ts'
import type { Sheet } from '../../../core/papers/index.ts'

/** The tables of a sheet, each under its title and headings, as CSV; text that a spreadsheet would run is guarded. */
export function makeCsv(sheet: Sheet): string {
  const tables = sheet.blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))
  const rows = tables.flatMap(({ title, columns, rows: lines }, index) => [
    ...(index === 0 ? [] : [[]]),
    [title],
    columns.map(({ label }) => label.trim()),
    ...lines.map((row) => columns.map(({ key }) => row[key] ?? '')),
  ])
  return writeDelimited(rows)
}

export function hasTables(sheet: Sheet): boolean {
  return sheet.blocks.some(({ kind }) => kind === 'table')
}
