import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { fontRuns } from '../../../core/papers/type/font-runs.ts'
import { BOLD_WIDTHS, REGULAR_WIDTHS, type WidthRuns } from '../../../core/papers/type/font-widths.ts'
import { widthOf } from '../../../core/papers/type/measure.ts'
import { OTHER_BOLD, OTHER_REGULAR } from '../../../core/papers/type/other-widths.ts'
import { MISSING, plainText } from '../../../core/papers/type/plain-text.ts'
import { fitText, wrapText } from '../../../core/papers/type/wrap.ts'

const FOLDER = dirname(
  dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/package.json')),
)

/** Advance widths by code point, read from the font file itself: cmap format 4 and hmtx (OpenType 1.9). */
function widthsInFile(file: string): ReadonlyMap<number, number> {
  const data = readFileSync(join(FOLDER, file))
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
  ])('%s has the widths that pages are laid out by', (file, runs) => {
    const inFile = widthsInFile(file)
    const figures = new Set([...'0123456789'].map((figure) => figure.codePointAt(0)))
    const ours = flat(runs)
    expect(ours.size).toBeGreaterThan(300)
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
    ['日本', MISSING + MISSING],
    ['שלום', MISSING.repeat(4)],
    ['a\u202Eb\u200Fc', `a${MISSING}b${MISSING}c`],
    ['tab\tand\nline', 'tab and line'],
    ['\u0000\u0007', MISSING + MISSING],
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
