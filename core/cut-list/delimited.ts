import { fail, ok, type Result } from '../units/index.ts'

/** One row of a sheet as text; number and line count from 1, blank rows included. */
export interface SheetRow {
  readonly number: number
  readonly line: number
  readonly cells: readonly string[]
}

/** Where a text breaks off from its own form. */
export interface QuoteFault {
  readonly row: number
  readonly line: number
  readonly column: number
  readonly message: string
  readonly fix: string
}

/** In the order in which they are preferred where a text speaks for none: a tab is rarest inside a cell. */
const SEPARATORS = ['\t', ';', ',']

/**
 * Reads CSV as RFC 4180 has it, or text pasted from a spreadsheet. The separator (tab, semicolon or comma) is the one
 * that splits most rows. A quotation mark opens a quoted cell only at the cell's start, so that 12'-6" may stand bare.
 */
export function readDelimited(text: string): Result<readonly SheetRow[], QuoteFault> {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text
  const tries = SEPARATORS.map((separator) => readSeparated(plain, separator))
  const split = ({ rows }: Try) => rows.filter(({ cells }) => cells.length > 1).length
  // among equals one that is read to its end, then the rarer separator
  const better = (a: Try, b: Try) =>
    split(b) > split(a) || (split(b) === split(a) && a.fault !== null && b.fault === null) ? b : a
  const { rows, fault } = tries.reduce(better)
  return fault === null ? ok(rows) : fail(fault)
}

/** Rows up to the end, or up to a fault. */
interface Try {
  readonly rows: readonly SheetRow[]
  readonly fault: QuoteFault | null
}

function readSeparated(text: string, separator: string): Try {
  const rows: SheetRow[] = []
  let at = 0
  let line = 1
  while (at < text.length) {
    const begin = line
    const cells: string[] = []
    for (let open = true; open; ) {
      if (text[at] === '"') {
        const quoted = quotedCell(text, at)
        const stop = (message: string, fix: string): Try => ({
          rows,
          fault: { row: rows.length + 1, line: begin, column: cells.length + 1, message, fix },
        })
        if (quoted === null) {
          return stop(
            'a quotation mark opens this cell and none closes it',
            'close it; inside quotes an inch mark is written twice, as in "12\'-6"""',
          )
        }
        line += breaksIn(quoted.text)
        at = quoted.next
        if (at < text.length && text[at] !== separator && text[at] !== '\r' && text[at] !== '\n') {
          return stop(
            'text follows the quotation mark that closes this cell',
            'put all of the cell between the marks; inside them an inch mark is written twice',
          )
        }
        cells.push(quoted.text)
      } else {
        const end = endOfBare(text, at, separator)
        cells.push(text.slice(at, end))
        at = end
      }
      open = text[at] === separator
      if (open) at += 1
    }
    if (text[at] === '\r' && text[at + 1] === '\n') at += 1
    at += 1
    line += 1
    rows.push({ number: rows.length + 1, line: begin, cells: cells.map((cell) => cell.trim()) })
  }
  return { rows, fault: null }
}

function quotedCell(text: string, open: number): { readonly text: string; readonly next: number } | null {
  const parts: string[] = []
  let from = open + 1
  for (;;) {
    const mark = text.indexOf('"', from)
    if (mark === -1) return null
    if (text[mark + 1] !== '"') {
      parts.push(text.slice(from, mark))
      return { text: parts.join(''), next: mark + 1 }
    }
    parts.push(text.slice(from, mark + 1))
    from = mark + 2
  }
}

function endOfBare(text: string, from: number, separator: string): number {
  let at = from
  while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at += 1
  return at
}

function breaksIn(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0
}
