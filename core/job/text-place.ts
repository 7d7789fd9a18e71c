/** A place in a text, from 1; a column counts UTF-16 units. */
export interface TextPlace {
  readonly line: number
  readonly column: number
}

/** Line and column of an index into a text; a line ends at \n, \r\n or \r. */
export function placeOf(text: string, index: number): TextPlace {
  const lines = text.slice(0, index).split(/\r\n|\r|\n/)
  return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 }
}
