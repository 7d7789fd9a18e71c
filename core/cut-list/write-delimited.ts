/**
 * Rows as CSV (RFC 4180, lines ended by CR LF). Text that a spreadsheet would take for a formula, because it starts
 * with = + - or @, gets an apostrophe before it; `unguarded` takes it off again. A length with its sign and its unit, as
 * a height over a datum is printed, names nothing that could be run and stays bare.
 * @param between what stands between two cells: a comma, or a tab for the clipboard
 */
export function writeDelimited(rows: readonly (readonly string[])[], between: ',' | '\t' = ','): string {
  return rows.map((row) => `${row.map(cell).join(between)}\r\n`).join('')
}

/** A cell's text without the apostrophe that guards it. */
export function unguarded(text: string): string {
  return /^'+[=+\-@]/.test(text) ? text.slice(1) : text
}

/** Nothing but digits, a fraction and the unit: "-36 in", "+1 1/2 in", `-3'-0 1/2"`. */
const SIGNED_LENGTH = /^[+-](?:\d+'-)?(?:\d+ )?\d+(?:\/\d+)?(?: in| ft|")$/

function cell(text: string): string {
  const runs = /^\s*'*[=+\-@]/.test(text) && !SIGNED_LENGTH.test(text)
  const guarded = runs ? `'${text.trimStart()}` : text
  return /[",;\t\r\n]|^\s|\s$/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}
