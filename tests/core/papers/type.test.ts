import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { anyWidth } from '../../../core/papers/type/any-widths.ts'
import { fontRuns } from '../../../core/papers/type/font-runs.ts'
import { BOLD_WIDTHS, REGULAR_WIDTHS, type WidthRuns } from '../../../core/papers/type/font-widths.ts'
import { widthOf } from '../../../core/papers/type/measure.ts'
import { OTHER_BOLD, OTHER_REGULAR } from '../../../core/papers/type/other-widths.ts'
import { plainText } from '../../../core/papers/type/plain-text.ts'
import {
  ARABIC_BOLD,
  ARABIC_REGULAR,
  HEBREW_BOLD,
  HEBREW_REGULAR,
} from '../../../core/papers/type/script-widths.ts'
import { visualOrder } from '../../../core/papers/type/visual-order.ts'
import { fitText, wrapText } from '../../../core/papers/type/wrap.ts'

const FOLDER = dirname(
  dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/package.json')),
)

/** Advance widths by code point, read from the font file itself: cmap format 4 and hmtx (OpenType 1.9). */
function widthsInFile(file: string): ReadonlyMap<number, number> {
  return widthsIn(readFileSync(join(FOLDER, file)))
}

function widthsIn(data: Buffer): ReadonlyMap<number, number> {
  const tables = new Map<string, number>()
  for (let i = 0; i < data.readUInt16BE(4); i += 1) {
    const at = 12 + i * 16
    tables.set(data.toString('latin1', at, at + 4), data.readUInt32BE(at + 8))
  }
  const table = (name: string): number => tables.get(name) ?? Number.NaN
  const metrics = data.readUInt16BE(table('hhea') + 34)
  const advance = (glyph: number): number =>
    data.readUInt16BE(table('hmtx') + 4 * Math.min(glyph, metrics - 1))
  const cmap = table('cmap')
  const found = new Map<number, number>()
  for (let i = 0; i < data.readUInt16BE(cmap + 2); i += 1) {
    const sub = cmap + data.readUInt32BE(cmap + 4 + i * 8 + 4)
    if (data.readUInt16BE(sub) !== 4) continue
    const segments = data.readUInt16BE(sub + 6) / 2
    for (let s = 0; s < segments; s += 1) {
      const end = data.readUInt16BE(sub + 14 + 2 * s)
      const start = data.readUInt16BE(sub + 16 + 2 * segments + 2 * s)
      const delta = data.readUInt16BE(sub + 16 + 4 * segments + 2 * s)
      const rangeAt = sub + 16 + 6 * segments + 2 * s
      const range = data.readUInt16BE(rangeAt)
      for (let code = start; code <= end && code < 0xffff; code += 1) {
        const direct = range === 0 ? code + delta : data.readUInt16BE(rangeAt + range + 2 * (code - start))
        const glyph = range === 0 || direct === 0 ? direct : direct + delta
        if (glyph % 65_536 !== 0) found.set(code, advance(glyph % 65_536))
      }
    }
  }
  return found
}

const flat = (runs: WidthRuns) =>
  new Map(runs.flatMap(([first, widths]) => widths.map((width, i) => [first + i, width] as const)))

describe('the printed font', () => {
  test.each([
    ['atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf', REGULAR_WIDTHS],
    ['atkinson-hyperlegible-next/600SemiBold/AtkinsonHyperlegibleNext_600SemiBold.ttf', BOLD_WIDTHS],
    ['noto-sans/400Regular/NotoSans_400Regular.ttf', OTHER_REGULAR],
    ['noto-sans/600SemiBold/NotoSans_600SemiBold.ttf', OTHER_BOLD],
    ['noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf', HEBREW_REGULAR],
    ['noto-sans-hebrew/600SemiBold/NotoSansHebrew_600SemiBold.ttf', HEBREW_BOLD],
    ['noto-sans-arabic/400Regular/NotoSansArabic_400Regular.ttf', ARABIC_REGULAR],
    ['noto-sans-arabic/600SemiBold/NotoSansArabic_600SemiBold.ttf', ARABIC_BOLD],
  ])('%s has the widths that pages are laid out by', (file, runs) => {
    const inFile = widthsInFile(file)
    const figures = new Set([...'0123456789'].map((figure) => figure.codePointAt(0)))
    const ours = flat(runs)
    expect(ours.size).toBeGreaterThan(100)
    for (const [code, width] of ours) {
      expect(inFile.has(code), `U+${code.toString(16)}`).toBe(true)
      // figures stand in their tabular forms, which cmap does not name
      if (!figures.has(code))
        expect(width, `U+${code.toString(16)}`).toBe(Math.round(inFile.get(code) ?? Number.NaN))
    }
  })

  test('is joined by another for extended Latin, Greek and Cyrillic, and only for what it lacks', () => {
    expect(fontRuns('Łódź Đà Nẵng, Αθήνα, Київ')).toContainEqual({ face: 'other', text: 'Київ' })
    expect(fontRuns('Łódź 12 ft')).toEqual([{ face: 'own', text: 'Łódź 12 ft' }])
    const own = flat(REGULAR_WIDTHS)
    for (const code of flat(OTHER_REGULAR).keys()) expect(own.has(code), `U+${code.toString(16)}`).toBe(false)
    expect([...flat(OTHER_BOLD).keys()]).toEqual([...flat(OTHER_REGULAR).keys()])
  })

  test('gives every figure one width, so that columns of them stand in line', () => {
    for (const runs of [REGULAR_WIDTHS, BOLD_WIDTHS]) {
      const ours = flat(runs)
      expect(new Set([...'0123456789'].map((figure) => ours.get(figure.charCodeAt(0)))).size).toBe(1)
    }
  })
})

describe('any text on a page', () => {
  test.each([
    ['Łódź ≤ ½', 'Łódź ≤ ½'],
    ['e\u0301', 'é'],
    ['5⅛″ ⌀ → Σ', '51/8" dia.  -> Σ'],
    ['Αθήνα, Київ, Đà Nẵng, Ţinutul', 'Αθήνα, Київ, Đà Nẵng, Ţinutul'],
    ['日本, 한국, ไทย', '日本, 한국, ไทย'],
    ['שלום', 'שלום'],
    ['🙂', '[U+1F642]'],
    ['a\u202Eb\u200Fc', 'a[U+202E]b[U+200F]c'],
    ['tab\tand\nline', 'tab and line'],
    ['\u0000\u0007', '[U+0000][U+0007]'],
    ['=cmd()', '=cmd()'],
    ['<b>%n', '<b>%n'],
  ])('%j is shown as %j: nothing is dropped without a sign', (words, shown) => {
    expect(plainText(words)).toBe(shown)
  })

  test('is wrapped within its room with every letter kept', () => {
    const words = `${'x'.repeat(10_000)} ${'word '.repeat(400)}`
    const lines = wrapText(words, 120, 9)
    for (const line of lines) expect(widthOf(line, 9)).toBeLessThanOrEqual(120)
    expect(lines.join('').replaceAll(' ', '')).toBe(words.replaceAll(' ', ''))
  })

  test('on one line is cut with an ellipsis where it is wider than its room', () => {
    const cut = fitText('A job with a name that is far too long for the foot of a page', 100, 8)
    expect(cut.endsWith('…')).toBe(true)
    expect(widthOf(cut, 8)).toBeLessThanOrEqual(100)
    expect(fitText('short', 100, 8)).toBe('short')
  })
})

describe('names in any script', () => {
  // forms as the charts Arabic Presentation Forms-A and -B of the Unicode Standard name them
  test.each([
    ['محمد', '\ufee3\ufea4\ufee4\ufeaa', 'meem first, hah middle, meem middle, dal last'],
    ['دار', '\ufea9\ufe8d\ufead', 'letters that join to none after them stand alone'],
    ['سلام', '\ufeb3\ufefc\ufee1', 'lam and alef are one letter, and the meem after it stands alone'],
    ['پری', '\ufb58\ufeae\ufbfc', 'peh first, reh last, Farsi yeh alone'],
    ['بَيت', '\ufe91\u064e\ufef4\ufe96', 'a vowel sign breaks no join'],
  ])('Arabic %s is joined: %s (%s)', (words, shown) => {
    expect(plainText(words)).toBe(shown)
  })

  // UAX 9 for each run of words from the right; a name never moves a figure of the sheet
  test.each([
    ['Deck of שלום, 12 ft', 'Deck of םולש, 12 ft'],
    ['שלום: 12 ft', 'םולש: 12 ft'],
    ['שלום (טוב) עולם', 'םלוע (בוט) םולש'],
    ['שלום ٤٢ עולם', 'םלוע ٤٢ םולש'],
    ['a (אב) b', 'a (בא) b'],
    ['Heron Lane', 'Heron Lane'],
  ])('%s stands as %s from left to right', (line, stands) => {
    expect(visualOrder(line)).toBe(stands)
  })

  test('have the widths of the font that draws every script, read from its file', () => {
    const file = createRequire(import.meta.url).resolve('@fontsource/unifontex/package.json')
    const packed = readFileSync(join(dirname(file), 'files', 'unifontex-latin-400-normal.woff'))
    const inFile = widthsIn(unwrapped(packed))
    let seen = 0
    for (let code = 0; code < 0x10000; code += 1) {
      const ours = anyWidth(code)
      if (ours === null) continue
      seen += 1
      // 1,024 units an em
      const theirs = Math.round(((inFile.get(code) ?? Number.NaN) * 1000) / 1024)
      if (theirs !== ours && isLeftOver(code)) expect(theirs, `U+${code.toString(16)}`).toBe(ours)
    }
    expect(seen).toBeGreaterThan(50_000)
  })
})

const isLeftOver = (code: number) => fontRuns(String.fromCharCode(code))[0]?.face === 'any'

/** The tables that `widthsIn` reads out of a WOFF 1.0 file, at their places in an OpenType file. */
function unwrapped(packed: Buffer): Buffer {
  const count = packed.readUInt16BE(12)
  const head = Buffer.alloc(12 + 16 * count)
  head.writeUInt16BE(count, 4)
  let offset = head.length
  const tables = Array.from({ length: count }, (_, i) => {
    const at = 44 + i * 20
    const stored = packed.subarray(
      packed.readUInt32BE(at + 4),
      packed.readUInt32BE(at + 4) + packed.readUInt32BE(at + 8),
    )
    const table = stored.length < packed.readUInt32BE(at + 12) ? inflateSync(stored) : stored
    packed.copy(head, 12 + 16 * i, at, at + 4)
    head.writeUInt32BE(offset, 12 + 16 * i + 8)
    offset += table.length
    return table
  })
  return Buffer.concat([head, ...tables])
}
