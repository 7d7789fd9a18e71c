import { type Weight, widthOf } from '../type/measure.ts'
import { plainText } from '../type/plain-text.ts'
import { wrapText } from '../type/wrap.ts'
import type { PaperTable } from '../types.ts'

/** Between the columns of a table, points; less where the table stands in a column of the page itself. */
const GAP = { usual: 12, narrow: 8 } as const

/** Type and leading in points; a table too wide for its figures is set smaller before they are broken. */
const TYPES = [
  { size: 8.5, step: 11 },
  { size: 7.5, step: 9.8 },
  { size: 6.6, step: 8.6 },
] as const
/** of these, the ones that a table is set in for the sake of its unbroken cells; smaller only where words would break */
const UNBROKEN = 2
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
  return TYPES.slice(0, UNBROKEN).some(({ size }) => wanted(table, strong, size, GAP.narrow).most <= room)
}

/**
 * As wide as their texts want; where that is more than there is, what is over their longest words gives way: alike, or
 * the widest first, or in between, whichever comes out lowest, so that one long cell does not break all the others.
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
    (unbroken ? tried.slice(0, UNBROKEN).find(({ most }) => most <= room) : undefined) ??
    tried.find(({ least }) => least <= room) ??
    tried.at(-1)
  if (fits === undefined) throw new Error('there is a type')
  const { type, columns, most, least, gaps } = fits
  const widths =
    most <= room
      ? columns.map((column) => column.most)
      : least >= room
        ? columns.map((column) => ((room - gaps) * column.least) / (least - gaps))
        : lowest(
            SHARES.map((share) => {
              const [alike, level] = [givenAlike(columns, room - least), levelled(columns, room - gaps)]
              return columns.map((_column, i) => (1 - share) * (alike[i] ?? 0) + share * (level[i] ?? 0))
            }),
            table,
            type.size,
          )
  return { widths, gap, ...type }
}

interface Wanted {
  readonly most: number
  readonly least: number
}

/** Of the widest giving way first, beside all giving way alike. */
const SHARES = [0, 0.25, 0.5, 0.75, 1] as const

/** Each over its least by the same share of what it wants. */
function givenAlike(columns: readonly Wanted[], over: number): readonly number[] {
  const all = columns.reduce((sum, { most, least }) => sum + most - least, 0)
  return columns.map(({ most, least }) => least + ((most - least) * over) / all)
}

/** What each wants up to one width, that of the widest, found by halving. */
function levelled(columns: readonly Wanted[], room: number): readonly number[] {
  const at = (level: number) => columns.map(({ most, least }) => Math.max(least, Math.min(most, level)))
  let [low, high] = [0, Math.max(...columns.map(({ most }) => most))]
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2
    if (at(middle).reduce((sum, width) => sum + width, 0) > room) high = middle
    else low = middle
  }
  return at(low)
}

const HALVINGS = 30

/** The widths at which the rows take the fewest lines; the first of equals. */
function lowest(
  tried: readonly (readonly number[])[],
  { columns, rows }: PaperTable,
  size: number,
): readonly number[] {
  const linesAt = (widths: readonly number[]): number =>
    rows.reduce(
      (sum, row) =>
        sum +
        Math.max(
          ...columns.map(
            ({ key }, i) =>
              wrapText((row[key] ?? '').slice(0, MEASURED), widths[i] ?? 0, size, 'regular').length,
          ),
        ),
      0,
    )
  const [first = [], ...others] = tried
  let best = { widths: first, lines: linesAt(first) }
  for (const widths of others) {
    const lines = linesAt(widths)
    if (lines < best.lines) best = { widths, lines }
  }
  return best.widths
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
