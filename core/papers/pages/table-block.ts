import type { Block } from '../sheet-types.ts'
import { widthOf } from '../type/measure.ts'
import { plainText } from '../type/plain-text.ts'
import { wrapText } from '../type/wrap.ts'
import type { PaperTable } from '../types.ts'
import type { Flow } from './flow.ts'
import { boxMark, LINE, lineMark, textMark } from './marks.ts'
import { heading } from './text-blocks.ts'

const SIZE = 8.5
const STEP = 11
const PAD = 3
const GAP = 12
const TICK = 18
/** a column is not made narrower than its longest word, as long as that is no wider than this */
const LONGEST_WORD = 90

type Lines = readonly (readonly string[])[]

/** A table with its headings repeated on every page that it reaches; a row that is longer than a page is carried on. */
export function tableBlock(
  flow: Flow,
  { table, tick, strong = [], empty }: Extract<Block, { kind: 'table' }>,
): void {
  if (table.title !== '') heading(flow, table.title)
  if (table.rows.length === 0) {
    flow.need(STEP * 2)
    flow.add(textMark(flow.left, flow.y + STEP, plainText(empty), { size: SIZE, tone: 'soft' }))
    flow.y += STEP * 2
    return
  }
  const indent = tick === true ? TICK : 0
  const widths = columnWidths(table, flow.width - indent)
  const wrap = (texts: readonly string[], weight: 'regular' | 'bold'): Lines =>
    texts.map((text, i) => wrapText(text, (widths[i] ?? 0) + 0.01, SIZE, weight))
  const head = wrap(
    table.columns.map(({ label }) => label),
    'bold',
  )
  const writeRow = (cells: Lines, weight: 'regular' | 'bold', ticked: boolean): void => {
    const height = Math.max(...cells.map((lines) => lines.length)) * STEP
    if (ticked) flow.add(boxMark(flow.left + 1, flow.y + PAD, 8.5, 8.5, { width: LINE.medium }))
    let x = flow.left + indent
    cells.forEach((lines, i) => {
      const width = widths[i] ?? 0
      const right = table.columns[i]?.align === 'right'
      lines.forEach((line, n) => {
        if (line !== '')
          flow.add(
            textMark(right ? x + width : x, flow.y + PAD + STEP * (n + 1) - 3, line, {
              size: SIZE,
              weight,
              anchor: right ? 'end' : 'start',
            }),
          )
      })
      x += width + GAP
    })
    flow.y += height + 2 * PAD
  }
  const wide = indent + widths.reduce((sum, width) => sum + width + GAP, -GAP)
  const writeHead = (): void => {
    writeRow(head, 'bold', false)
    flow.add(lineMark(flow.left, flow.y, flow.left + wide, flow.y, { width: LINE.medium }))
  }
  const heightOf = (cells: Lines): number => Math.max(...cells.map((lines) => lines.length)) * STEP + 2 * PAD
  flow.need(heightOf(head) + 3 * STEP)
  writeHead()
  table.rows.forEach((row, index) => {
    const weight = strong.includes(index) ? 'bold' : 'regular'
    let cells = wrap(
      table.columns.map(({ key }) => row[key] ?? ''),
      weight,
    )
    if (weight === 'bold') flow.add(lineMark(flow.left, flow.y, flow.left + wide, flow.y, { tone: 'ink' }))
    let first = true
    while (cells.some((lines) => lines.length > 0)) {
      if (heightOf(cells) > flow.room && (heightOf(cells) < flow.whole / 2 || flow.room < 6 * STEP)) {
        flow.newPage()
        writeHead()
      }
      const fit = Math.max(1, Math.floor((flow.room - 2 * PAD) / STEP))
      writeRow(
        cells.map((lines) => lines.slice(0, fit)),
        weight,
        first && tick === true,
      )
      cells = cells.map((lines) => lines.slice(fit))
      first = false
    }
    flow.add(lineMark(flow.left, flow.y, flow.left + wide, flow.y, { width: 0.25, tone: 'hair' }))
  })
  flow.y += 8
}

/** As wide as their texts want; where that is more than there is, what is over their longest words gives way alike. */
function columnWidths({ columns, rows }: PaperTable, room: number): readonly number[] {
  const wanted = columns.map(({ key, label }) => {
    const texts = rows.map((row) => plainText(row[key] ?? '').slice(0, 400))
    const widest = (list: readonly string[], bold: string): number =>
      Math.max(widthOf(bold, SIZE, 'bold'), ...list.map((text) => widthOf(text, SIZE)))
    const words = (text: string): readonly string[] => text.split(' ')
    const longestHead = words(label).reduce((a, b) =>
      widthOf(b, SIZE, 'bold') > widthOf(a, SIZE, 'bold') ? b : a,
    )
    return {
      most: widest(texts, label),
      least: Math.min(LONGEST_WORD, widest(texts.flatMap(words), longestHead)),
    }
  })
  const gaps = GAP * (columns.length - 1)
  const most = wanted.reduce((sum, column) => sum + column.most, gaps)
  if (most <= room) return wanted.map((column) => column.most)
  const least = wanted.reduce((sum, column) => sum + column.least, gaps)
  if (least >= room) return wanted.map((column) => ((room - gaps) * column.least) / (least - gaps))
  const part = (room - least) / (most - least)
  return wanted.map((column) => column.least + (column.most - column.least) * part)
}
