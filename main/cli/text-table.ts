import type { PaperTable } from '../../core/papers/index.ts'

/** Widest line that is printed; the window of a terminal is rarely narrower. */
const WIDEST = 110
const INDENT = '  '
const GAP = '  '
/** A column that is wrapped keeps at least this many characters. */
const NARROWEST = 14

/** A table as aligned text: title, headings with a rule under them, rows wrapped inside their columns. */
export function textTable(table: PaperTable, headings = true): string {
  if (table.rows.length === 0) return ''
  const columns = table.columns.filter(({ key }) => table.rows.some((row) => (row[key] ?? '') !== ''))
  const widths = narrowed(
    columns.map(({ key, label }) =>
      Math.max(headings ? label.length : 0, ...table.rows.map((row) => (row[key] ?? '').length)),
    ),
    columns.map(({ align }) => align === 'left'),
  )
  const line = (cells: readonly string[]) =>
    (
      INDENT + cells.map((cell, at) => pad(cell, widths[at] ?? 0, columns[at]?.align === 'right')).join(GAP)
    ).trimEnd()
  const lines = [table.title]
  if (headings) {
    for (const cells of wrapRow(
      columns.map(({ label }) => label),
      widths,
    ))
      lines.push(line(cells))
    lines.push(line(widths.map((width) => '─'.repeat(width))))
  }
  for (const row of table.rows) {
    for (const cells of wrapRow(
      columns.map(({ key }) => row[key] ?? ''),
      widths,
    ))
      lines.push(line(cells))
  }
  return `${lines.join('\n')}\n`
}

/** Narrows the widest wordy column until the line fits. */
function narrowed(natural: readonly number[], wordy: readonly boolean[]): readonly number[] {
  const widths = [...natural]
  const over = () =>
    INDENT.length + widths.reduce((sum, width) => sum + width, 0) + GAP.length * (widths.length - 1) - WIDEST
  while (over() > 0) {
    const widest = widths.reduce(
      (best, width, at) => (wordy[at] && width > (widths[best] ?? 0) ? at : best),
      wordy.indexOf(true),
    )
    if (widest === -1 || (widths[widest] ?? 0) <= NARROWEST) return widths
    widths[widest] = (widths[widest] ?? 0) - 1
  }
  return widths
}

function wrapRow(cells: readonly string[], widths: readonly number[]): readonly (readonly string[])[] {
  const wrapped = cells.map((cell, at) => wrap(cell, widths[at] ?? cell.length))
  const height = Math.max(1, ...wrapped.map((lines) => lines.length))
  return Array.from({ length: height }, (_, at) => wrapped.map((lines) => lines[at] ?? ''))
}

/** Words in lines no longer than `width`; a longer word is broken. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of printable(text).split(' ')) {
    let rest = word
    if (line !== '' && line.length + 1 + rest.length > width) {
      lines.push(line)
      line = ''
    }
    while (rest.length > width) {
      lines.push(rest.slice(0, width))
      rest = rest.slice(width)
    }
    line = line === '' ? rest : `${line} ${rest}`
  }
  return [...lines, line]
}

/** Foreign text cannot move the cursor or colour the terminal. */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]/gu, ' ')
}

function pad(text: string, width: number, right: boolean): string {
  return right ? text.padStart(width) : text.padEnd(width)
}
