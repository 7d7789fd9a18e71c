import { fail, ok, type Result } from './result.ts'
import type { TextFault } from './text-fault.ts'

/** One sign of a typed length, with its place in the text. */
export type LengthToken =
  | { readonly kind: 'number'; readonly text: string; readonly at: number }
  | { readonly kind: 'vulgar'; readonly numerator: bigint; readonly denominator: bigint; readonly at: number }
  | { readonly kind: 'slash' | 'dash' | 'plus' | 'foot' | 'inch'; readonly text: string; readonly at: number }
  | { readonly kind: 'word'; readonly text: string; readonly at: number }

const VULGAR: ReadonlyMap<string, readonly [bigint, bigint]> = new Map([
  ['½', [1n, 2n]],
  ['¼', [1n, 4n]],
  ['¾', [3n, 4n]],
  ['⅛', [1n, 8n]],
  ['⅜', [3n, 8n]],
  ['⅝', [5n, 8n]],
  ['⅞', [7n, 8n]],
  ['⅓', [1n, 3n]],
  ['⅔', [2n, 3n]],
  ['⅕', [1n, 5n]],
  ['⅖', [2n, 5n]],
  ['⅗', [3n, 5n]],
  ['⅘', [4n, 5n]],
  ['⅙', [1n, 6n]],
  ['⅚', [5n, 6n]],
  ['⅐', [1n, 7n]],
  ['⅑', [1n, 9n]],
  ['⅒', [1n, 10n]],
])

const ONE_MARK = "'’‘′´`ʹ＇"
const DOUBLE_MARK = '"”“″ʺ＂'
const DASHES = '-−–—‐‑‒'
const SLASHES = '/⁄∕'
const FEET = new Set(['ft', 'feet', 'foot'])
const INCHES = new Set(['in', 'inch', 'inches', 'ins'])

/** Cuts a typed length into its signs; the first foreign sign is the fault. */
export function lengthTokens(text: string): Result<readonly LengthToken[], TextFault> {
  const tokens: LengthToken[] = []
  let at = 0
  while (at < text.length) {
    const sign = text.charAt(at)
    const vulgar = VULGAR.get(sign)
    const numeral = /^(?:\d+(?:\.\d*)*|\.\d[\d.]*)/.exec(text.slice(at))?.[0]
    const word = /^\p{L}+/u.exec(text.slice(at))?.[0]
    if (/\s/u.test(sign)) {
      at += 1
    } else if (vulgar !== undefined) {
      tokens.push({ kind: 'vulgar', numerator: vulgar[0], denominator: vulgar[1], at })
      at += 1
    } else if (numeral !== undefined) {
      tokens.push({ kind: 'number', text: numeral, at })
      at += numeral.length
    } else if (ONE_MARK.includes(sign)) {
      const twice = at + 1 < text.length && ONE_MARK.includes(text.charAt(at + 1))
      tokens.push({ kind: twice ? 'inch' : 'foot', text: text.slice(at, at + (twice ? 2 : 1)), at })
      at += twice ? 2 : 1
    } else if (DOUBLE_MARK.includes(sign)) {
      tokens.push({ kind: 'inch', text: sign, at })
      at += 1
    } else if (DASHES.includes(sign)) {
      tokens.push({ kind: 'dash', text: sign, at })
      at += 1
    } else if (SLASHES.includes(sign)) {
      tokens.push({ kind: 'slash', text: sign, at })
      at += 1
    } else if (sign === '+') {
      tokens.push({ kind: 'plus', text: sign, at })
      at += 1
    } else if (word !== undefined) {
      const unit = word.toLowerCase()
      const kind = FEET.has(unit) ? 'foot' : INCHES.has(unit) ? 'inch' : 'word'
      tokens.push({ kind, text: word, at })
      at += word.length
      if (text.charAt(at) !== '.' || kind === 'word') continue
      if (/^\.\d/.test(text.slice(at))) return fail(doubtfulPoint(word, at))
      // an abbreviation's full stop, as in "12 ft. 6 in."
      at += 1
    } else {
      return fail(foreignSign(text, at))
    }
  }
  return ok(tokens)
}

function doubtfulPoint(unit: string, at: number): TextFault {
  return {
    message: `the point after "${unit}" may end the word or begin a decimal`,
    fix: `put a space after it (${unit}. 6) or before it (${unit} .6)`,
    at,
  }
}

function foreignSign(text: string, at: number): TextFault {
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0)
  if (sign === ',') {
    return {
      message: 'a length has no comma in it',
      fix: 'decimals take a point: 12.5 ft; thousands are written together: 1200',
      at,
    }
  }
  if (sign === '.')
    return { message: 'this point belongs to no number', fix: 'write a decimal such as 12.5 ft', at }
  return {
    message: `"${sign}" is not part of a length`,
    fix: 'use digits, fractions such as 1/2, and ft, in, \' or "',
    at,
  }
}
