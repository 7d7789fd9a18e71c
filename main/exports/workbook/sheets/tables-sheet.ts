import type { Sheet as Paper, PaperTable } from '../../../../core/papers/index.ts'
import { type Cell, text } from '../cell.ts'
import { type Sheet, SheetBuilder } from '../sheet.ts'

/** Widest column, in characters; what is longer is wrapped. */
const WIDEST = 44
const NARROWEST = 8

/** The tables of a printed sheet, one below the other, to be sorted and searched; null where it has none. */
export function tablesSheet(name: string, paper: Paper | undefined): Sheet | null {
  const tables = (paper?.blocks ?? []).flatMap((block) => (block.kind === 'table' ? [block.table] : []))
  const filled = tables.filter(({ rows }) => rows.length > 0)
  if (paper === undefined || filled.length === 0) return null
  const sheet = new SheetBuilder(name, widthsOf(filled), true)
  sheet.title(name)
  sheet.note(`As on the sheet “${paper.title}”.`)
  for (const table of filled) writeTable(sheet, table)
  return sheet.done()
}

function writeTable(sheet: SheetBuilder, { title, columns, rows }: PaperTable): void {
  if (title === '') sheet.gap()
  else sheet.heading(title)
  sheet.header(columns.map(({ label, align }) => `${align === 'right' ? '>' : ''}${label}`))
  for (const row of rows)
    sheet.row(
      columns.map(({ key, align }): Cell => text(row[key] ?? '', { wrap: true, right: align === 'right' })),
    )
}

function widthsOf(tables: readonly PaperTable[]): readonly number[] {
  const count = Math.max(...tables.map(({ columns }) => columns.length))
  return Array.from({ length: count }, (_, at) => {
    const lengths = tables.flatMap(({ columns, rows }) => {
      const column = columns[at]
      if (column === undefined) return []
      return [column.label.length + 2, ...rows.map((row) => (row[column.key] ?? '').length)]
    })
    return Math.min(WIDEST, Math.max(NARROWEST, ...lengths))
  })
}
