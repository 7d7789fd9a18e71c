import { fail, ok, type Result, ticks } from '../units/index.ts'
import { type Block, blocksOf, type RowKind, readKind } from './blocks.ts'
import { readDelimited, type SheetRow } from './delimited.ts'
import { type Columns, findColumns } from './find-columns.ts'
import {
  MOST_PIECES,
  readCountCell,
  readLengthCell,
  readPriceCell,
  readTextCell,
  readWildCell,
  short,
} from './read-cell.ts'
import { readPurchase } from './read-purchase.ts'
import type { CutList, ListPiece, ListStock, Meaning, ReadOptions, RowFault, Source } from './types.ts'
import { unguarded } from './write-delimited.ts'

/** Longest text that is read: 75 characters for each of 20,000 rows. */
export const LONGEST_LIST = 1_500_000

/**
 * Reads a list of pieces, of stock, or of both from CSV or from text pasted from a spreadsheet. Any fault refuses the
 * whole: nothing is half imported. Every fault names row and column.
 */
export function readCutList(text: string, options: ReadOptions): Result<CutList, readonly RowFault[]> {
  const { source } = options
  const all = (message: string, fix: string): RowFault => ({
    source,
    row: 0,
    line: 1,
    column: 0,
    heading: '',
    message,
    fix,
  })
  if (text.length > LONGEST_LIST)
    return fail([all(`the list has ${text.length} characters`, `keep it under ${LONGEST_LIST}`)])
  const sheet = readDelimited(text)
  if (!sheet.ok) return fail([{ source, heading: '', ...sheet.error }])
  const blocks = blocksOf(sheet.value, source)
  if (blocks.length === 0) {
    const sample = source === 'stock' ? 'length, price' : 'quantity, length, mark, product'
    return fail([all('the list is empty', `write a row of headings, such as ${sample}, and rows below it`)])
  }
  const faults: RowFault[] = []
  const read = { pieces: [] as ListPiece[], stock: [] as ListStock[], ignored: [] as string[] }
  for (const block of blocks) {
    const columns = findColumns(block.rows, options.columns)
    if (!columns.ok) {
      const { row, ...fault } = columns.error
      const heading = row.cells[fault.column - 1] ?? ''
      faults.push({ source, row: row.number, line: row.line, heading, ...fault })
      continue
    }
    read.ignored.push(...columns.value.ignored)
    readBlock(block, columns.value, source, read, faults)
  }
  return faults.length > 0 ? fail(faults) : ok(read)
}

function readBlock(
  block: Block,
  columns: Columns,
  source: Source,
  read: { readonly pieces: ListPiece[]; readonly stock: ListStock[] },
  faults: RowFault[],
): void {
  const { heading } = columns
  const rows = heading === null ? block.rows : block.rows.slice(1)
  let total = read.pieces.reduce((sum, { count }) => sum + count, 0)
  for (const row of rows) {
    const cells = cellsOf(row, columns, source, faults)
    const before = faults.length
    const extra =
      heading === null ? -1 : row.cells.findIndex((cell, at) => cell !== '' && at >= heading.cells.length)
    if (extra !== -1) {
      const message = `this row has ${row.cells.length} cells and the headings are ${heading?.cells.length}`
      cells.wrong(extra, {
        message,
        fix: 'if a separator stands inside a text, put the text in quotation marks',
      })
      continue
    }
    const kind = cells.kind(block.kind)
    const product = cells.text('product')
    const length = cells.read('length', (text) => readLengthCell(text, columns.unit))
    const wild = cells.given('wild')
      ? cells.read('wild', (text) => readWildCell(text, columns.wildUnit))
      : ticks(0)
    if (kind !== 'piece' && wild !== null && wild > 0) {
      const fix = 'leave this cell empty, or make the row a piece'
      cells.wrongAt('wild', { message: 'only a piece runs wild', fix })
    }
    if (kind === 'piece') {
      const count = cells.has('quantity') ? cells.read('quantity', readCountCell) : 1
      const mark = cells.text('mark')
      if (faults.length > before || length === null || count === null || wild === null) continue
      total += count
      if (total > MOST_PIECES) {
        const message = `with this row the list has more than ${MOST_PIECES} pieces`
        cells.wrong(columns.at.get('quantity') ?? -1, { message, fix: 'split the list into smaller ones' })
        return
      }
      read.pieces.push({ row: row.number, line: row.line, product, mark, length, wild, count })
    } else {
      const offcut = kind === 'offcut'
      const price = cells.given('price') ? cells.read('price', (text) => readPriceCell(text, offcut)) : null
      const column = cells.has('supply') ? 'supply' : 'quantity'
      const supply = cells.given(column) ? cells.read(column, readCountCell) : offcut ? 1 : null
      const purchase = readPurchase(cells, { offcut, price, supply })
      const code = cells.text('code')
      if (faults.length > before || length === null) continue
      read.stock.push({
        source,
        row: row.number,
        line: row.line,
        product,
        code,
        length,
        price,
        supply,
        ...purchase,
        offcut,
      })
    }
  }
}

interface Wrong {
  readonly message: string
  readonly fix: string
}

/** The cells of a row by their meaning; what cannot be read becomes a fault at its place. */
function cellsOf(row: SheetRow, columns: Columns, source: Source, faults: RowFault[]) {
  const cell = (meaning: Meaning) => row.cells[columns.at.get(meaning) ?? -1] ?? ''
  const wrong = (index: number, { message, fix }: Wrong) => {
    const heading = columns.heading?.cells[index] ?? ''
    faults.push({ source, row: row.number, line: row.line, column: index + 1, heading, message, fix })
  }
  const read = <T>(meaning: Meaning, reader: (text: string) => Result<T, Wrong>): T | null => {
    const value = reader(cell(meaning))
    if (value.ok) return value.value
    wrong(columns.at.get(meaning) ?? -1, value.error)
    return null
  }
  return {
    wrong,
    wrongAt: (meaning: Meaning, fault: Wrong) => wrong(columns.at.get(meaning) ?? -1, fault),
    read,
    has: (meaning: Meaning) => columns.at.has(meaning),
    given: (meaning: Meaning) => cell(meaning) !== '',
    text: (meaning: Meaning): string => unguarded(read(meaning, readTextCell) ?? ''),
    kind: (otherwise: RowKind): RowKind => {
      if (cell('kind') === '') return otherwise
      const fix = 'write piece, stock or offcut'
      const reader = (text: string): Result<RowKind, Wrong> => {
        const kind = readKind(text)
        return kind === null ? fail({ message: `"${short(text)}" is no kind of row`, fix }) : ok(kind)
      }
      return read('kind', reader) ?? otherwise
    },
  }
}
