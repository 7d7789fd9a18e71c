import type { Cell } from './cell.ts'

export interface Column {
  /** in characters of the body type */
  readonly width: number
}

export interface Row {
  readonly cells: readonly Cell[]
  readonly kind: 'title' | 'note' | 'heading' | 'header' | 'group' | 'body' | 'gap'
  /** lines of text in its tallest cell */
  readonly lines: number
}

/** One sheet as data. Rows are numbered from 1, as formulas count them. */
export interface Sheet {
  readonly name: string
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
  readonly landscape: boolean
  /** row of the first table's header, which stays in view; null: none, or tables of as many rows follow */
  readonly headerRow: number | null
  /** it is printed on every page, as nothing long follows under other headings */
  readonly repeats: boolean
}

/** Rows of a table that stand together under its own headings, whatever is repeated at the head of their page. */
const SHORT = 12

/** Builds a sheet from the top; every method answers the number of the row it wrote. */
export class SheetBuilder {
  readonly #name: string
  readonly #columns: readonly Column[]
  readonly #landscape: boolean
  readonly #rows: Row[] = []
  #headerRow: number | null = null
  readonly #headers: number[] = []

  constructor(name: string, widths: readonly number[], landscape = false) {
    this.#name = name
    this.#columns = widths.map((width) => ({ width }))
    this.#landscape = landscape
  }

  title(words: string): number {
    return this.#add('title', [{ kind: 'text', text: words, bold: true, size: 16 }], 1)
  }

  /** A sentence over the sheet's whole width. */
  note(words: string): number {
    const width = this.#columns.reduce((sum, column) => sum + column.width, 0)
    const cell: Cell = { kind: 'text', text: words, soft: true, wrap: true, span: this.#columns.length }
    return this.#add('note', [cell], linesOf(words, width))
  }

  heading(words: string): number {
    return this.#add('heading', [{ kind: 'text', text: words, bold: true, size: 12 }], 1)
  }

  gap(): number {
    return this.#add('gap', [], 1)
  }

  /** Column headings; the first ones of a sheet stay in view. A name that begins with ">" stands right, over figures. */
  header(names: readonly string[], sticky = true): number {
    const cells = names.map((name): Cell => {
      const right = name.startsWith('>')
      return { kind: 'text', text: right ? name.slice(1) : name, bold: true, right, wrap: true }
    })
    const row = this.#add('header', cells, this.#linesIn(cells))
    this.#headers.push(row)
    if (sticky) this.#headerRow ??= row
    return row
  }

  /** Name of the rows below it, inside a table. */
  group(words: string): number {
    return this.#add('group', [{ kind: 'text', text: words, bold: true }], 1)
  }

  row(cells: readonly Cell[]): number {
    return this.#add('body', cells, this.#linesIn(cells))
  }

  get next(): number {
    return this.#rows.length + 1
  }

  done(): Sheet {
    const [first = 0, second = this.next] = this.#headers.filter((row) => row >= (this.#headerRow ?? 0))
    const isLong = second - first > this.next - second
    return {
      name: this.#name,
      columns: this.#columns,
      rows: this.#rows,
      landscape: this.#landscape,
      headerRow: isLong ? this.#headerRow : null,
      repeats: this.next - second <= SHORT,
    }
  }

  #add(kind: Row['kind'], cells: readonly Cell[], lines: number): number {
    this.#rows.push({ kind, cells, lines })
    return this.#rows.length
  }

  #linesIn(cells: readonly Cell[]): number {
    return Math.max(
      1,
      ...cells.map((cell, index) => {
        if (cell.kind !== 'text' || cell.wrap !== true) return 1
        const columns = this.#columns.slice(index, index + (cell.span ?? 1))
        return linesOf(
          cell.text,
          columns.reduce((sum, column) => sum + column.width, 0),
        )
      }),
    )
  }
}

/** A column's width counts figures; letters of running text are narrower by about this much. */
const LETTERS_PER_FIGURE = 1.2

/** Lines that a text takes when wrapped at words; a spreadsheet does not grow merged rows by itself. */
function linesOf(words: string, figures: number): number {
  const width = figures * LETTERS_PER_FIGURE
  let lines = 0
  for (const paragraph of words.split('\n')) {
    let used = 0
    lines += 1
    for (const word of paragraph.split(' ')) {
      if (used > 0 && used + 1 + word.length > width) {
        lines += 1
        used = 0
      }
      used += (used > 0 ? 1 : 0) + word.length
    }
  }
  return lines
}

/** Name of a column: 1 is A, 27 is AA. */
export function columnName(index: number): string {
  const letter = String.fromCharCode(65 + ((index - 1) % 26))
  return index <= 26 ? letter : columnName(Math.floor((index - 1) / 26)) + letter
}
