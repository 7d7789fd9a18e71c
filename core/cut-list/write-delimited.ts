/**
 * Rows as CSV (RFC 4180, lines ended by CR LF). Text that a spreadsheet would take for a formula, because it starts
 * with = + - or @, gets an apostrophe before it; `unguarded` takes it off again.
 * @param between what stands between two cells: a comma, or a tab for the clipboard
 */
export function writeDelimited(rows: readonly (readonly string[])[], between: ',' | '\t' = ','): string {
  return rows.map((row) => `${row.map(cell).join(between)}\r\n`).join('')
}

/** A cell's text without the apostrophe that guards it. */
export function unguarded(text: string): string {
  return /^'+[=+\-@]/.test(text) ? text.slice(1) : text
}

function cell(text: string): string {
  const guarded = /^\s*'*[=+\-@]/.test(text) ? `'${text.trimStart()}` : text
  return /[",;\t\r\n]|^\s|\s$/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}
