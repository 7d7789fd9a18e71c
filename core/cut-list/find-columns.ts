import { fail, ok, parseLength, type Result } from '../units/index.ts'
import type { SheetRow } from './delimited.ts'
import { type ColumnUnit, columnLetters, type Heading, headingsFor, readHeading } from './headings.ts'
import type { Meaning } from './types.ts'

/** Where the columns of a block are. */
export interface Columns {
  readonly heading: SheetRow | null
  /** index of the column of each meaning that there is */
  readonly at: ReadonlyMap<Meaning, number>
  readonly unit: ColumnUnit
  /** unit of bare numbers in the column of what runs wild: inches unless its heading says feet */
  readonly wildUnit: ColumnUnit
  readonly ignored: readonly string[]
}

/** What is wrong with a block's columns; `column` counts from 1, 0 for none. */
export interface ColumnFault {
  readonly row: SheetRow
  readonly column: number
  readonly message: string
  readonly fix: string
}

/** Of these there may be one only: a second would make figures doubtful. Of the others the first is read. */
const SINGLE: readonly Meaning[] = [
  'length',
  'quantity',
  'wild',
  'price',
  'supply',
  'pack',
  'minimum',
  'break from',
  'break price',
]

/** Finds what each column of a block holds: as told, else by its headings, else by its cells. */
export function findColumns(
  rows: readonly SheetRow[],
  told: readonly Meaning[] | undefined,
): Result<Columns, ColumnFault> {
  const [first] = rows
  if (first === undefined) throw new Error('a block has rows')
  const heading = isHeading(first) ? first : null
  const meanings =
    told ??
    (heading === null ? meaningsOfCells(rows) : heading.cells.map((cell) => meaningOf(readHeading(cell))))
  const at = new Map<Meaning, number>()
  for (const [index, meaning] of meanings.entries()) {
    if (meaning === 'nothing') continue
    const earlier = at.get(meaning)
    if (earlier === undefined) at.set(meaning, index)
    else if (SINGLE.includes(meaning)) {
      const both = `columns ${named(first, heading, earlier)} and ${named(first, heading, index)}`
      return fail({
        row: first,
        column: index + 1,
        message: `${both} could both be the ${meaning}`,
        fix: told === undefined ? howToName(heading) : 'give each meaning to one column',
      })
    }
  }
  const length = at.get('length')
  if (length === undefined) {
    return fail({
      row: first,
      column: 0,
      message:
        heading === null ? 'no column can be told to hold the lengths' : 'no heading names the lengths',
      fix:
        heading === null
          ? howToName(heading)
          : `head the column of lengths with one of: ${headingsFor('length')}`,
    })
  }
  const unit = heading === null ? null : (readHeading(heading.cells[length] ?? '')?.unit ?? null)
  if (unit === 'metric') {
    return fail({
      row: first,
      column: length + 1,
      message: `"${heading?.cells[length]}" asks for metric lengths; lengths here lie on a grid of 1/32 in`,
      fix: 'give the lengths in inches or feet',
    })
  }
  const wild = readHeading(heading?.cells[at.get('wild') ?? -1] ?? '')?.unit ?? 'in'
  return ok({ heading, at, unit: unit ?? 'in', wildUnit: wild, ignored: ignoredOf(heading, meanings, at) })
}

/** The meaning of each column as it would be read, for a window that lets it be changed; as many as there are columns. */
export function guessColumns(rows: readonly SheetRow[]): readonly Meaning[] {
  const [first] = rows
  if (first === undefined) return []
  return isHeading(first) ? first.cells.map((cell) => meaningOf(readHeading(cell))) : meaningsOfCells(rows)
}

/** A heading has words and no cell that begins as a number does. */
function isHeading(row: SheetRow): boolean {
  const filled = row.cells.filter((cell) => cell !== '')
  return (
    filled.every((cell) => !/^[-+.$]?\s*[\d½¼¾⅛⅜⅝⅞]/.test(cell)) &&
    filled.some((cell) => /\p{L}|#/u.test(cell))
  )
}

function meaningOf(heading: Heading | null): Meaning {
  return heading?.meaning ?? 'nothing'
}

type Look = 'length' | 'whole' | 'product' | 'money' | 'number' | 'text'

/** Without headings only what cannot be mistaken is taken: lengths by their units, or where no other numbers stand. */
function meaningsOfCells(rows: readonly SheetRow[]): readonly Meaning[] {
  const width = Math.max(...rows.map((row) => row.cells.length))
  const looks = Array.from({ length: width }, (_, index) => lookOf(rows.map((row) => row.cells[index] ?? '')))
  const numbers = looks.filter((look) => look === 'whole' || look === 'number').length
  const hasUnits = looks.includes('length')
  const numberIs = (look: 'whole' | 'number'): Meaning => {
    if (!hasUnits) return numbers === 1 ? 'length' : 'nothing'
    return look === 'whole' ? 'quantity' : 'nothing'
  }
  return looks.map((look, index): Meaning => {
    if (look === 'whole' || look === 'number') return numberIs(look)
    if (look === 'text') return looks.indexOf('text') === index ? 'mark' : 'nothing'
    return look === null ? 'nothing' : look === 'money' ? 'price' : look
  })
}

/** What most cells of a column look like, so that one bad cell does not hide what the column is; null for no cells. */
function lookOf(cells: readonly string[]): Look | null {
  const counts = new Map<Look, number>()
  for (const cell of cells) {
    if (cell === '') continue
    const look = lookOfCell(cell)
    counts.set(look, (counts.get(look) ?? 0) + 1)
  }
  if ((counts.get('length') ?? 0) > 0) {
    // lengths may stand among bare numbers of inches
    const numbers = (counts.get('whole') ?? 0) + (counts.get('number') ?? 0)
    counts.set('length', (counts.get('length') ?? 0) + numbers)
    counts.delete('whole')
    counts.delete('number')
  } else if ((counts.get('number') ?? 0) > 0) {
    counts.set('number', (counts.get('number') ?? 0) + (counts.get('whole') ?? 0))
    counts.delete('whole')
  }
  return (
    [...counts].reduce<[Look, number] | null>(
      (best, one) => (best === null || one[1] > best[1] ? one : best),
      null,
    )?.[0] ?? null
  )
}

function lookOfCell(cell: string): Look {
  if (/^\d{1,5}$/.test(cell)) return 'whole'
  if (/^\$/.test(cell)) return 'money'
  if (/^\d+(\/\d+)?\s*[x×]\s*\d+/i.test(cell)) return 'product'
  if (!parseLength(cell).ok) return 'text'
  return /[a-z'"’”′″]/i.test(cell) || /\d-\d/.test(cell) ? 'length' : 'number'
}

function ignoredOf(
  heading: SheetRow | null,
  meanings: readonly Meaning[],
  at: ReadonlyMap<Meaning, number>,
): readonly string[] {
  const read = new Set(at.values())
  const cells = heading?.cells ?? meanings.map(() => '')
  return cells.flatMap((cell, index) =>
    read.has(index) || (cell === '' && heading !== null)
      ? []
      : [cell === '' ? `column ${columnLetters(index + 1)}` : cell],
  )
}

function named(first: SheetRow, heading: SheetRow | null, index: number): string {
  const letters = columnLetters(index + 1)
  return heading === null ? letters : `${letters} (${first.cells[index]})`
}

function howToName(heading: SheetRow | null): string {
  return heading === null
    ? 'put headings in the first row, such as quantity, length, mark, product, or write the lengths with their units'
    : 'change one of the headings, or say what each column holds'
}
