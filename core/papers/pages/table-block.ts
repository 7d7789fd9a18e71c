import type { Block } from '../sheet-types.ts'
import { plainText } from '../type/plain-text.ts'
import { wrapText } from '../type/wrap.ts'
import { type Columns, columnsFor } from './column-widths.ts'
import type { Flow } from './flow.ts'
import { boxMark, LINE, lineMark, textMark } from './marks.ts'
import { heading } from './text-blocks.ts'

/** over and under a row's words, points: closer where a whole page is saved by it */
const PAD = { usual: 3, close: 2 } as const
/** before a row with a box to tick, points */
export const TICK = 18
/** the line that says that there is nothing, points */
const EMPTY = 22
/** a table's name over it, points */
const HEADING = 32

type Lines = readonly (readonly string[])[]
type Weight = 'regular' | 'bold'

/** A table with its headings repeated on every page that it reaches; a row that is longer than a page is carried on. */
export function tableBlock(flow: Flow, block: Extract<Block, { kind: 'table' }>): void {
  const { table, strong = [], empty } = block
  const textsOf = (row: (typeof table.rows)[number]) => table.columns.map(({ key }) => row[key] ?? '')
  const texts = table.rows.map(textsOf)
  const writer = new RowWriter(flow, block, padFor(flow, block, texts))
  const [first] = table.rows
  if (block.whole === true) {
    const high = Math.min(HEADING + writer.whole(texts), flow.page)
    flow.need(high)
    // the next column of a page may be as short as this one was
    flow.need(high)
  }
  // a table's name stands over its first rows
  if (table.title !== '')
    heading(flow, table.title, first === undefined ? EMPTY : writer.start(textsOf(first)))
  if (first === undefined) {
    flow.need(EMPTY)
    flow.add(textMark(flow.left, flow.y + 11, plainText(empty), { size: 8.5, tone: 'soft' }))
    flow.y += EMPTY
    return
  }
  writer.begin(textsOf(first))
  table.rows.forEach((row, index) => {
    writer.row(textsOf(row), strong.includes(index) ? 'bold' : 'regular')
  })
  flow.y += 8
}

/** Closer where that leaves nothing for another page, of which it would take a few rows; in columns, where the columns do. */
function padFor(
  flow: Flow,
  block: Extract<Block, { kind: 'table' }>,
  texts: readonly (readonly string[])[],
): number {
  if (flow.isInColumns) return flow.isClose ? PAD.close : PAD.usual
  const over = block.table.title === '' ? 0 : HEADING
  const pages = (pad: number): number =>
    Math.ceil(
      (new RowWriter(flow, block, pad).whole(texts) + over + (block.follows ?? 0) + flow.y - flow.top) /
        flow.page,
    )
  return pages(PAD.close) < pages(PAD.usual) ? PAD.close : PAD.usual
}

class RowWriter {
  readonly #pad: number
  readonly #flow: Flow
  readonly #columns: Columns
  readonly #right: readonly boolean[]
  readonly #tick: boolean
  readonly #head: Lines
  readonly #wide: number

  constructor(
    flow: Flow,
    { table, tick = false, strong = [], columns }: Extract<Block, { kind: 'table' }>,
    pad: number,
  ) {
    this.#flow = flow
    this.#pad = pad
    this.#tick = tick
    this.#right = table.columns.map(({ align }) => align === 'right')
    const indent = tick ? TICK : 0
    this.#columns = columnsFor(table, strong, flow.width - indent, columns !== undefined)
    const { widths, gap } = this.#columns
    this.#wide = indent + widths.reduce((sum, width) => sum + width + gap, -gap)
    this.#head = this.#wrap(
      table.columns.map(({ label }) => label),
      'bold',
    )
  }

  /** Room that the columns' names and the first row take, points; three lines of a row at least, half a page at most. */
  start(first: readonly string[]): number {
    const row = Math.max(3 * this.#columns.step, this.#heightOf(this.#wrap(first, 'bold')))
    return this.#heightOf(this.#head) + Math.min(row, this.#flow.whole / 2)
  }

  /** Height of the columns' names and of all rows, points. */
  whole(rows: readonly (readonly string[])[]): number {
    return rows.reduce(
      (sum, row) => sum + this.#heightOf(this.#wrap(row, 'regular')),
      this.#heightOf(this.#head),
    )
  }

  begin(first: readonly string[]): void {
    this.#flow.need(this.start(first))
    this.#writeHead()
  }

  row(texts: readonly string[], weight: Weight): void {
    const flow = this.#flow
    const { step } = this.#columns
    let cells = this.#wrap(texts, weight)
    let isFirst = true
    while (cells.some((lines) => lines.length > 0)) {
      const high = this.#heightOf(cells)
      if (high > flow.room && (high < flow.whole / 2 || flow.room < 6 * step)) {
        flow.newPage()
        this.#writeHead()
      }
      const fit = Math.max(1, Math.floor((flow.room - 2 * this.#pad) / step))
      if (weight === 'bold' && isFirst) this.#rule(LINE.fine, 'ink')
      this.#write(
        cells.map((lines) => lines.slice(0, fit)),
        weight,
        isFirst && this.#tick,
      )
      cells = cells.map((lines) => lines.slice(fit))
      isFirst = false
    }
    this.#rule(0.25, 'hair')
  }

  #wrap(texts: readonly string[], weight: Weight): Lines {
    const { widths, size } = this.#columns
    return texts.map((text, i) => wrapText(text, (widths[i] ?? 0) + 0.01, size, weight))
  }

  #heightOf(cells: Lines): number {
    return Math.max(...cells.map((lines) => lines.length)) * this.#columns.step + 2 * this.#pad
  }

  #writeHead(): void {
    this.#write(this.#head, 'bold', false)
    this.#rule(LINE.medium, 'ink')
  }

  #rule(width: number, tone: 'ink' | 'hair'): void {
    const { left, y } = this.#flow
    this.#flow.add(lineMark(left, y, left + this.#wide, y, { width, tone }))
  }

  #write(cells: Lines, weight: Weight, ticked: boolean): void {
    const flow = this.#flow
    const { widths, gap, size, step } = this.#columns
    if (ticked) flow.add(boxMark(flow.left + 1, flow.y + this.#pad, 8.5, 8.5, { width: LINE.medium }))
    let x = flow.left + (this.#tick ? TICK : 0)
    cells.forEach((lines, i) => {
      const width = widths[i] ?? 0
      const right = this.#right[i] === true
      lines.forEach((line, n) => {
        if (line === '') return
        const y = flow.y + this.#pad + step * (n + 1) - step * 0.27
        flow.add(textMark(right ? x + width : x, y, line, { size, weight, anchor: right ? 'end' : 'start' }))
      })
      x += width + gap
    })
    flow.y += this.#heightOf(cells)
  }
}
