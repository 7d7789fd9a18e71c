import bidiFactory from 'bidi-js'

const bidi = bidiFactory()
const LETTER = '[\\u0590-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc]'
const RIGHT_TO_LEFT = new RegExp(LETTER)
/** Letters from the right with what stands between them; a figure or a letter from the left ends it. */
const RUN = new RegExp(`${LETTER}(?:[^\\d\\p{L}]*${LETTER})*`, 'gu')

/** Whether a text holds letters that are written from the right. */
export function runsFromRight(text: string): boolean {
  return RIGHT_TO_LEFT.test(text)
}

/**
 * One line of a page in the order in which its letters stand, from left to right: words that are written from the right
 * are turned by the Unicode Bidirectional Algorithm (UAX 9), each run of them by itself. Figures stay where the sheet has
 * them: by the algorithm for whole lines, a name could draw the number after it to its other side.
 */
export function visualOrder(line: string): string {
  if (!runsFromRight(line)) return line
  return line.replace(RUN, (run) => bidi.getReorderedString(run, bidi.getEmbeddingLevels(run, 'rtl')))
}
