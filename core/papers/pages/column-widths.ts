import { type Weight, widthOf } from '../type/measure.ts'
import { plainText } from '../type/plain-text.ts'
import type { PaperTable } from '../types.ts'

/** Between the columns of a table, points; less where the table stands in a column of the page itself. */
const GAP = { usual: 12, narrow: 8 } as const

/** Type and leading in points; a table too wide for its figures is set smaller before they are broken. */
const TYPES = [
  { size: 8.5, step: 11 },
  { size: 7.5, step: 9.8 },
  { size: 6.6, step: 8.6 },
] as const
/** a column keeps its longest word whole, and figures whole, as long as they are no wider than this */
const LONGEST = 90
/** beyond so many characters a cell is running text, and measuring all of it tells nothing */
const MEASURED = 400

export interface Columns {
  readonly gap: number
  readonly widths: readonly number[]
  readonly size: number
  readonly step: number
}

/** Whether a table stands in so much room with no cell broken, at a type no smaller than the second. */
export function fitsUnbroken(table: PaperTable, strong: readonly number[], room: number): boolean {
  return TYPES.slice(0, 2).some(({ size }) => wanted(table, strong, size, GAP.narrow).most <= room)
}

/**
 * As wide as their texts want; where that is more than there is, what is over their longest words gives way alike.
 * Unbroken: set smaller before any cell is broken.
 */
export function columnsFor(
  table: PaperTable,
  strong: readonly number[],
  room: number,
  unbroken = false,
): Columns {
  const gap = unbroken ? GAP.narrow : GAP.usual
  const tried = TYPES.map((type) => ({ type, ...wanted(table, strong, type.size, gap) }))
  const fits =
    (unbroken ? tried.find(({ most }) => most <= room) : undefined) ??
    tried.find(({ least }) => least <= room) ??
    tried.at(-1)
  if (fits === undefined) throw new Error('there is a type')
  const { type, columns, most, least, gaps } = fits
  const widths =
    most <= room
      ? columns.map((column) => column.most)
      : least >= room
        ? columns.map((column) => ((room - gaps) * column.least) / (least - gaps))
        : columns.map(
            (column) => column.least + ((column.most - column.least) * (room - least)) / (most - least),
          )
  return { widths, gap, ...type }
}

function wanted({ columns, rows }: PaperTable, strong: readonly number[], size: number, gap: number) {
  const each = columns.map(({ key, label, align }) => {
    const texts = rows.map(
      (row, i): Text => ({
        text: plainText((row[key] ?? '').slice(0, MEASURED)),
        weight: strong.includes(i) ? 'bold' : 'regular',
      }),
    )
    const head: Text = { text: label, weight: 'bold' }
    const whole = align === 'right' ? texts : texts.flatMap(wordsOf)
    return {
      most: widest([head, ...texts], size),
      least: Math.max(widest(wordsOf(head), size), Math.min(LONGEST, widest(whole, size))),
    }
  })
  const gaps = gap * (columns.length - 1)
  return {
    columns: each,
    gaps,
    most: each.reduce((sum, column) => sum + column.most, gaps),
    least: each.reduce((sum, column) => sum + column.least, gaps),
  }
}

interface Text {
  readonly text: string
  readonly weight: Weight
}

function wordsOf({ text, weight }: Text): readonly Text[] {
  return text.split(' ').map((word) => ({ text: word, weight }))
}

function widest(texts: readonly Text[], size: number): number {
  return texts.reduce((most, { text, weight }) => Math.max(most, widthOf(text, size, weight)), 0)
}
