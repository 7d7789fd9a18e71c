import { anyWidth } from './any-widths.ts'
import { BOLD_WIDTHS, REGULAR_WIDTHS, type WidthRuns } from './font-widths.ts'
import { OTHER_BOLD, OTHER_REGULAR } from './other-widths.ts'
import { ARABIC_BOLD, ARABIC_REGULAR, HEBREW_BOLD, HEBREW_REGULAR } from './script-widths.ts'

export type Weight = 'regular' | 'bold'

const widthsOf = (runs: WidthRuns): ReadonlyMap<number, number> =>
  new Map(runs.flatMap(([first, widths]) => widths.map((width, i): [number, number] => [first + i, width])))

const WIDTHS = {
  regular: widthsOf([...REGULAR_WIDTHS, ...OTHER_REGULAR, ...HEBREW_REGULAR, ...ARABIC_REGULAR]),
  bold: widthsOf([...BOLD_WIDTHS, ...OTHER_BOLD, ...HEBREW_BOLD, ...ARABIC_BOLD]),
}

/** Width of a text in points, without kerning and with tabular figures, as every renderer draws it. */
export function widthOf(text: string, size: number, weight: Weight = 'regular'): number {
  const widths = WIDTHS[weight]
  let sum = 0
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0
    sum += widths.get(code) ?? anyWidth(code) ?? 0
  }
  return (sum * size) / 1000
}
