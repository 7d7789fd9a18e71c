import { type Weight, widthOf } from './measure.ts'
import { plainText } from './plain-text.ts'

/**
 * A text in lines no wider than `width` points, broken at spaces; a word that is wider than a line is broken anywhere,
 * so that nothing is lost. Line breaks of the text stay. An empty text is one empty line.
 */
export function wrapText(
  words: string,
  width: number,
  size: number,
  weight: Weight = 'regular',
): readonly string[] {
  return words
    .split(/\r\n|\r|\n/)
    .flatMap((paragraph) => wrapParagraph(plainText(paragraph), width, size, weight))
}

function wrapParagraph(text: string, width: number, size: number, weight: Weight): readonly string[] {
  const lines: string[] = []
  const space = widthOf(' ', size, weight)
  let line = ''
  let used = 0
  for (const word of text.split(' ').filter((each) => each !== '')) {
    for (const part of pieces(word, width, size, weight)) {
      const wide = widthOf(part, size, weight)
      if (line !== '' && used + space + wide > width) {
        lines.push(line)
        line = ''
        used = 0
      }
      used += (line === '' ? 0 : space) + wide
      line = line === '' ? part : `${line} ${part}`
    }
  }
  return [...lines, line]
}

function pieces(word: string, width: number, size: number, weight: Weight): readonly string[] {
  if (widthOf(word, size, weight) <= width) return [word]
  const parts: string[] = []
  let part = ''
  let used = 0
  for (const character of word) {
    const wide = widthOf(character, size, weight)
    if (part !== '' && used + wide > width) {
      parts.push(part)
      part = ''
      used = 0
    }
    part += character
    used += wide
  }
  return [...parts, part]
}

/** A text on one line, cut with an ellipsis where it is wider than its room. */
export function fitText(words: string, width: number, size: number, weight: Weight = 'regular'): string {
  const text = plainText(words)
  if (widthOf(text, size, weight) <= width) return text
  let kept = ''
  let used = widthOf('…', size, weight)
  for (const character of text) {
    used += widthOf(character, size, weight)
    if (used > width) break
    kept += character
  }
  return `${kept.trimEnd()}…`
}
