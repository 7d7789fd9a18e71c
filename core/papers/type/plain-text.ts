import { REGULAR_WIDTHS } from './font-widths.ts'
import { OTHER_REGULAR } from './other-widths.ts'

/** Stands where the font has no character: seen, never dropped. */
export const MISSING = '◊'

/** Ways to write what the font lacks, in characters that it has. */
const WRITTEN: { readonly [character: string]: string } = {
  '′': "'",
  '″': '"',
  '→': '->',
  '⌀': 'dia. ',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '–',
  '\u2015': '—',
  '●': '•',
}

const drawn = new Set(
  [...REGULAR_WIDTHS, ...OTHER_REGULAR].flatMap(([first, widths]) => widths.map((_, i) => first + i)),
)

/**
 * Any text as the printed fonts can show it, on one line: composed letters, white space as spaces, other spellings for
 * what they lack, and a lozenge for what has none: Latin, Greek and Cyrillic are drawn, other scripts are not. Marks that turn the direction of writing become lozenges too,
 * so that no name can make a sheet read otherwise than it is written.
 */
export function plainText(words: string): string {
  let out = ''
  for (const character of words.normalize('NFC')) {
    const code = character.codePointAt(0) ?? 0
    if (/\s/u.test(character) && code !== 0x20) out += ' '
    else if (code >= 0x20 && drawn.has(code)) out += character
    else out += WRITTEN[character] ?? MISSING
  }
  return out
}
