import type { Source } from './types.ts'

/** A source in one phrase, with how far it was verified: "IRC 2021 R507.6.2, verified". */
export function cite({ document, edition, clause, confidence }: Source): string {
  const known = [document, edition, clause].filter((part) => part !== '')
  // common practice has no document to name
  return document === '' ? confidence : `${known.join(' ')}, ${confidence}`
}
