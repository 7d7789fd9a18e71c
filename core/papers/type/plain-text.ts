import { anyWidth } from './any-widths.ts'
import { joinedArabic } from './arabic-forms.ts'
import { REGULAR_WIDTHS } from './font-widths.ts'
import { OTHER_REGULAR } from './other-widths.ts'
import { ARABIC_REGULAR, HEBREW_REGULAR } from './script-widths.ts'

/** Stands where no font has the character: its number in Unicode, which can be looked up; seen, never dropped. */
function named(code: number): string {
  return `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`
}

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
  [...REGULAR_WIDTHS, ...OTHER_REGULAR, ...HEBREW_REGULAR, ...ARABIC_REGULAR].flatMap(([first, widths]) =>
    widths.map((_, i) => first + i),
  ),
)

/**
 * Any text as the printed fonts can show it, on one line and in the order of reading: composed letters, Arabic ones
 * joined, white space as spaces, other spellings for signs that they lack, and its number for what none of them draws, such
 * as emoji. Marks that turn the direction of writing are named by theirs too, so that no name can make a sheet read
 * otherwise than it is written.
 */
export function plainText(words: string): string {
  let out = ''
  for (const character of joinedArabic(words.normalize('NFC'))) {
    const code = character.codePointAt(0) ?? 0
    if (/\s/u.test(character) && code !== 0x20) out += ' '
    else if (code >= 0x20 && drawn.has(code)) out += character
    else out += WRITTEN[character] ?? (anyWidth(code) === null ? named(code) : character)
  }
  return out
}
