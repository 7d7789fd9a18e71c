import { writeDelimited } from '../../../core/cut-list/index.ts'
import type { StatedLine } from '../../../core/job/index.ts'
import type { Line } from '../../../core/pricing/index.ts'
import { fail, ok, printMoney, printUnitPrice, type Result } from '../../../core/units/index.ts'
import { type LineFigure, readFigure } from './line-values.ts'

/** What a pasted row states of a line. */
export interface BlockChange {
  readonly line: Line['id']
  readonly change: Partial<Pick<StatedLine, LineFigure>>
}

const FIGURES: { readonly [column: number]: LineFigure } = { 1: 'thousandths', 2: 'price' }

/** Item, code, quantity, unit, price and amount, tab by tab as spreadsheets take them. */
export function linesAsText(lines: readonly Line[]): string {
  const rows = lines.map((line) => [
    line.label,
    line.code,
    `${line.thousandths / 1000}`,
    line.unit,
    printUnitPrice(line.price),
    printMoney(line.amount),
  ])
  return writeDelimited([['Item', 'Code', 'Quantity', 'Unit', 'Each', 'Amount'], ...rows], '\t')
}

/**
 * Reads a block of figures pasted at a cell: a row for each line from there on, a column for the quantity or the price
 * and the one after it. Empty figures leave theirs alone. The first fault refuses the whole block.
 * @param lines from the line with the focus on
 * @param column of the cell with the focus
 */
export function readBlock(
  text: string,
  lines: readonly Line[],
  column: number,
): Result<readonly BlockChange[], string> {
  const rows = text
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((row) => row.split('\t'))
  const wide = Math.max(...rows.map((row) => row.length))
  if (FIGURES[column] === undefined || FIGURES[column + wide - 1] === undefined)
    return fail('Nothing was pasted: figures go into the columns Quantity and Each.')
  if (rows.length > lines.length)
    return fail(
      `Nothing was pasted: the block has ${rows.length} rows, and ${lines.length} lines follow here.`,
    )
  const read: BlockChange[] = []
  for (const [index, row] of rows.entries()) {
    const line = lines[index]
    if (line === undefined) continue
    let change: BlockChange['change'] = {}
    for (const [place, cell] of row.entries()) {
      const figure = FIGURES[column + place]
      if (figure === undefined || cell.trim() === '') continue
      const one = readFigure(line, figure, cell)
      if (!one.ok) return fail(`Nothing was pasted. Row ${index + 1}, ${line.label}: ${one.error}`)
      change = { ...change, ...one.value }
    }
    read.push({ line: line.id, change })
  }
  return ok(read)
}
