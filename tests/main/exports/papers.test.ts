import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import DxfParser from 'dxf-parser'
import { afterAll, describe, expect, test } from 'vitest'
import {
  aboutOf,
  type Drawing,
  layOutPages,
  makeSheets,
  type Page,
  type PaperSource,
  SHEET_IDS,
} from '../../../core/papers/index.ts'
import { printMoney } from '../../../core/units/index.ts'
import { makePapers } from '../../../main/app/papers.ts'
import { makeDxf } from '../../../main/exports/dxf/index.ts'
import { makePdf } from '../../../main/exports/pdf/index.ts'
import { makeSvg } from '../../../main/exports/svg/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { pngOf } from './png-of.ts'

const folder = mkdtempSync(join(tmpdir(), 'kerfwright-papers-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const source = paperSource({ ...smallJob(), name: 'Łódź Lane ≤ ½' })
const pages = layOutPages(makeSheets(source), aboutOf(source), { paper: 'letter', scale: null })
const pdf = await makePdf(pages, aboutOf(source))
const textsOf = (page: Page): readonly string[] =>
  page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))

function pdfText(bytes: Uint8Array, ...options: readonly string[]): string {
  const file = join(folder, 'read.pdf')
  writeFileSync(file, bytes)
  return execFileSync('pdftotext', [...options, file, '-'], { encoding: 'utf8', maxBuffer: 1e8 })
}

const squeezed = (words: string): string => words.normalize('NFC').replace(/\s+/g, '')

describe('the PDF', () => {
  test('holds every text of every page, found again by pdftotext', () => {
    for (const page of pages) {
      const found = squeezed(pdfText(pdf, '-raw', '-f', `${page.number}`, '-l', `${page.number}`))
      for (const words of textsOf(page)) expect(found, `page ${page.number}`).toContain(squeezed(words))
    }
  })

  test('has the pages in their sizes, across and upright', () => {
    const file = join(folder, 'size.pdf')
    writeFileSync(file, pdf)
    const said = execFileSync('pdfinfo', ['-f', '1', '-l', '999', file], { encoding: 'utf8' })
    const sizes = [...said.matchAll(/Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts/g)].map(([, w, h]) => [
      Number(w),
      Number(h),
    ])
    expect(sizes).toEqual(pages.map(({ width, height }) => [width, height]))
  })

  test('draws each line and box where the page has it, to 0.2 mm', () => {
    const near = (0.2 / 25.4) * 72
    const drawn = pagePoints(pdf)
    expect(drawn).toHaveLength(pages.length)
    for (const [index, page] of pages.entries()) {
      const points = drawn[index] ?? []
      const has = (x: number, y: number): boolean =>
        points.some(([px, py]) => Math.abs(px - x) < near && Math.abs(page.height - py - y) < near)
      for (const mark of page.marks) {
        if (mark.kind === 'line') expect(has(mark.x1, mark.y1) && has(mark.x2, mark.y2)).toBe(true)
        if (mark.kind === 'path') expect(mark.points.every(([x, y]) => has(x, y))).toBe(true)
      }
    }
  })

  test('embeds its fonts and asks for nothing from elsewhere', () => {
    const file = join(folder, 'fonts.pdf')
    writeFileSync(file, pdf)
    const fonts = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2)
    expect(fonts.length).toBeGreaterThan(0)
    for (const font of fonts) expect(font).toMatch(/AtkinsonHyperlegibleNext.* yes yes yes/)
  })

  test('writes names in Greek, Cyrillic and extended Latin, with a font of theirs inside', async () => {
    const name = 'Αθήνα, Київ, Đà Nẵng'
    const named = { ...source, firm: { ...source.firm, name } }
    const made = await makePdf(
      layOutPages(makeSheets(named, ['quote']), aboutOf(named), { paper: 'letter', scale: null }),
      aboutOf(named),
    )
    expect(squeezed(pdfText(made, '-raw'))).toContain(squeezed(name))
    const file = join(folder, 'fonts.pdf')
    writeFileSync(file, made)
    expect(execFileSync('pdffonts', [file], { encoding: 'utf8' })).toMatch(/NotoSans.* yes yes yes/)
  })

  test('writes names in Hebrew, Arabic, Chinese, Japanese, Korean and Thai, found again by another program', async () => {
    const names = ['שלום', 'محمد', '山田太郎', '中文', 'さくら', '한국', 'ไทย']
    const named = { ...source, firm: { ...source.firm, name: 'Names', lines: names } }
    const made = await makePdf(
      layOutPages(makeSheets(named, ['quote']), aboutOf(named), { paper: 'letter', scale: null }),
      aboutOf(named),
    )
    // letters that are joined go down in their joined forms, which are the same letters
    const found = squeezed(pdfText(made).normalize('NFKC'))
    for (const name of names) expect(found).toContain(name)
    const file = join(folder, 'scripts.pdf')
    writeFileSync(file, made)
    const fonts = execFileSync('pdffonts', [file], { encoding: 'utf8' })
    for (const font of ['NotoSansHebrew', 'NotoSansArabic', 'UnifontExMono'])
      expect(fonts).toMatch(new RegExp(`${font}.* yes yes yes`))
    // of fonts of several megabytes only the letters that are used go along
    expect(made.length).toBeLessThan(200_000)
  })

  test('carries the firm’s logo at the head of every page, in its own shape', async () => {
    const logo = { data: `data:image/png;base64,${pngOf(60, 20).toString('base64')}`, width: 60, height: 20 }
    const marked = { ...source, firm: { ...source.firm, logo } }
    const paper = layOutPages(makeSheets(marked, ['quote', 'record']), aboutOf(marked), {
      paper: 'letter',
      scale: null,
    })
    const file = join(folder, 'logo.pdf')
    writeFileSync(file, await makePdf(paper, aboutOf(marked)))
    const said = execFileSync('pdfimages', ['-list', file], { encoding: 'utf8' }).trim().split('\n').slice(2)
    expect(said.length).toBe(paper.length)
    for (const line of said) expect(line).toMatch(/image\s+60\s+20\s/)
    for (const page of paper) {
      const image = page.marks.find(({ kind }) => kind === 'image')
      if (image?.kind !== 'image') throw new Error('a page has the logo')
      expect(image.w / image.h).toBeCloseTo(3, 2)
      expect(image.x + image.w).toBeLessThanOrEqual(page.width - 40 + 0.001)
      expect(makeSvg(page, logo)).toContain(`href="${logo.data}"`)
    }
  })

  test('is the same file in another time zone and locale, on another day', () => {
    const script = join(import.meta.dirname, 'write-papers.ts')
    const runs = [
      { TZ: 'UTC', LANG: 'C' },
      { TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
    ].map((env) => {
      const run = spawnSync(process.execPath, [script], { env: { ...process.env, ...env }, encoding: 'utf8' })
      if (run.status !== 0) throw new Error(run.stderr)
      return run.stdout
    })
    expect(runs[0]).toMatch(/^[0-9a-f]{64}\n/)
    expect(runs[1]).toBe(runs[0])
  })
})

/** Every point that a path of a page goes through, from the content streams of the file itself. */
function pagePoints(bytes: Uint8Array): readonly (readonly (readonly [number, number])[])[] {
  const data = Buffer.from(bytes)
  const found: (readonly [number, number])[][] = []
  for (let at = data.indexOf('stream\n'); at >= 0; at = data.indexOf('stream\n', at + 7)) {
    if (data.toString('latin1', at - 3, at) === 'end') continue
    const end = data.indexOf('endstream', at)
    const text = inflated(data.subarray(at + 7, end))
    if (text === null || !/^1 0 0 -1 0 [\d.]+ cm/m.test(text)) continue
    found.push(pointsIn(text))
  }
  return found
}

function inflated(part: Buffer): string | null {
  try {
    return inflateSync(part).toString('latin1')
  } catch {
    return null
  }
}

function pointsIn(text: string): (readonly [number, number])[] {
  const points: (readonly [number, number])[] = []
  let matrix: readonly number[] = [1, 0, 0, 1, 0, 0]
  const kept: (readonly number[])[] = []
  for (const line of text.split('\n')) {
    const words = line.trim().split(/\s+/)
    const numbers = words.slice(0, -1).map(Number)
    const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix
    const [x = 0, y = 0] = numbers
    switch (words.at(-1)) {
      case 'q':
        kept.push(matrix)
        break
      case 'Q':
        matrix = kept.pop() ?? matrix
        break
      case 'cm': {
        const [A = 1, B = 0, C = 0, D = 1, E = 0, F = 0] = numbers
        matrix = [
          a * A + c * B,
          b * A + d * B,
          a * C + c * D,
          b * C + d * D,
          a * E + c * F + e,
          b * E + d * F + f,
        ]
        break
      }
      case 'm':
      case 'l':
        points.push([a * x + c * y + e, b * x + d * y + f])
    }
  }
  return points
}

describe('the SVG', () => {
  test('is well-formed and says every text as it is, whatever it is', () => {
    for (const page of pages) {
      const svg = makeSvg(page)
      const texts = [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, words = '']) =>
        words
          .replaceAll('&lt;', '<')
          .replaceAll('&gt;', '>')
          .replaceAll('&quot;', '"')
          .replaceAll('&amp;', '&'),
      )
      expect(texts).toEqual(textsOf(page))
      expect(svg.match(/&(?!lt;|gt;|quot;|amp;)/)).toBeNull()
    }
  })
})

describe('the DXF, read back by another reader', () => {
  const drawings = makeSheets(source).flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing] : [])),
  )

  test.each(drawings.map((drawing) => [drawing.id, drawing] as const))(
    '%s has the same places, layers and texts',
    (_, drawing) => {
      const read = new DxfParser().parseSync(makeDxf(drawing))
      if (read === null) throw new Error('it cannot be read')
      expect(read.header?.$INSUNITS).toBe(1)
      const entities = read.entities as unknown as readonly {
        readonly type: string
        readonly layer: string
        readonly text?: string
        readonly vertices?: readonly { readonly x: number; readonly y: number }[]
        readonly center?: { readonly x: number; readonly y: number }
        readonly radius?: number
      }[]
      const near = (a: number | undefined, b: number): boolean => Math.abs((a ?? Number.NaN) - b) < 1e-6
      for (const p of drawing.primitives) {
        const own = entities.filter(({ layer }) => layer === p.layer)
        if (p.kind === 'text' || p.kind === 'dimension')
          expect(own.some(({ type, text }) => type === 'TEXT' && text === p.text)).toBe(true)
        if (p.kind === 'circle')
          expect(
            own.some(
              ({ center, radius }) =>
                near(center?.x, p.cx / 32) && near(center?.y, -p.cy / 32) && near(radius, p.r / 32),
            ),
          ).toBe(true)
        if (p.kind === 'line')
          expect(
            own.some(
              ({ type, vertices }) =>
                type === 'LINE' &&
                near(vertices?.[0]?.x, p.x1 / 32) &&
                near(vertices?.[0]?.y, -p.y1 / 32) &&
                near(vertices?.[1]?.x, p.x2 / 32) &&
                near(vertices?.[1]?.y, -p.y2 / 32),
            ),
          ).toBe(true)
        if (p.kind === 'rect')
          expect(
            own.some(
              ({ type, vertices }) =>
                type === 'LWPOLYLINE' &&
                near(vertices?.[0]?.x, p.x / 32) &&
                near(vertices?.[2]?.x, (p.x + p.w) / 32) &&
                near(vertices?.[0]?.y, -p.y / 32) &&
                near(vertices?.[2]?.y, -(p.y + p.h) / 32),
            ),
          ).toBe(true)
      }
    },
  )

  test('draws boards and decks at an angle with every corner', () => {
    const points = [
      { x: 0, y: 0 },
      { x: 320, y: 64 },
      { x: 288, y: 160 },
    ]
    const look = { weight: 'medium', stroke: 'hidden', fill: 'wood' } as const
    const drawing: Drawing = {
      id: 'd',
      title: 'D',
      x0: 0,
      y0: 0,
      x1: 320,
      y1: 160,
      primitives: [{ kind: 'polygon', id: 'rim-2', layer: 'joists', points, ...look }],
    }
    const entities = (new DxfParser().parseSync(makeDxf(drawing))?.entities ?? []) as unknown as readonly {
      readonly type: string
      readonly layer: string
      readonly lineType: string
      readonly shape: boolean
      readonly vertices: readonly { readonly x: number; readonly y: number }[]
    }[]
    expect(entities).toHaveLength(1)
    // inches, y upward: 32 ticks are an inch
    expect(entities[0]).toMatchObject({
      type: 'LWPOLYLINE',
      layer: 'joists',
      lineType: 'HIDDEN',
      shape: true,
    })
    expect(entities[0]?.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [10, -2],
      [9, -5],
    ])
  })

  test('writes foreign text as text: no line break, no code of the format', () => {
    const text = 'a\nb\r0\nEOF\n %%c ^J \\U+0041'
    const [first] = drawings
    if (first === undefined) throw new Error('there is a drawing')
    const dxf = makeDxf({
      ...first,
      primitives: [
        { kind: 'text', id: 'x', layer: 'marks', x: 0, y: 0, text, anchor: 'start', size: 'small' },
      ],
    })
    expect(dxf.split('\n').filter((line) => line.trim() === 'EOF')).toHaveLength(1)
    expect(dxf).not.toContain('%%c')
    expect(dxf).not.toContain('\\U+0041')
  })
})

describe('foreign text', () => {
  const NAMES = [
    '=cmd()',
    '<b>bold</b>',
    '%n%s%d',
    '\u202Egnp.exe',
    '日本 Łódź',
    '"; DROP TABLE jobs; --',
    '&amp;',
    'Ж'.repeat(10_000),
  ]

  test.each(NAMES.map((name) => [name.slice(0, 30), name]))(
    '%j is printed as text on every paper and run on none',
    async (_, name) => {
      const named: PaperSource = {
        ...source,
        estimate: { ...source.estimate, job: { ...source.estimate.job, name } },
        firm: { ...source.firm, name, lines: [name], terms: [name] },
      }
      const page = { paper: 'letter', scale: null } as const
      const wish = { only: SHEET_IDS, formats: ['pdf', 'csv', 'svg', 'dxf', 'txt'], page, stem: 'x' } as const
      const { files } = await makePapers(named, wish, makePdf)
      const shown = name.replaceAll('\u202E', '[U+202E]')
      for (const { name: file, content } of files) {
        // a name of many pages is cut by their heads and feet: every letter of it is there
        if (typeof content !== 'string' && name.length > 1000)
          expect(pdfText(content, '-raw').match(/Ж/g)?.length).toBeGreaterThanOrEqual(name.length)
        else if (typeof content !== 'string')
          expect(squeezed(pdfText(content, '-raw'))).toContain(squeezed(shown))
        else if (file.endsWith('.csv'))
          for (const cell of cellsOf(content)) expect(cell).not.toMatch(/^[=+\-@]/)
        // a message is plain text, in which a tag is only written
        else if (!file.endsWith('.txt')) expect(content).not.toContain('<b>')
      }
    },
  )

  const cellsOf = (csv: string): readonly string[] =>
    [...csv.matchAll(/(?:^|,|\n)(?:"((?:[^"]|"")*)"|([^,\r\n]*))/g)].map(
      ([, quoted, bare]) => quoted ?? bare ?? '',
    )
})

describe('a quote', () => {
  test('shows the customer the price and none of our cost, overhead or margin', () => {
    const quote = layOutPages(makeSheets(source, ['quote']), aboutOf(source), {
      paper: 'letter',
      scale: null,
    })
    const words = quote.flatMap(textsOf).join('\n')
    const { totals, lines } = source.estimate.pricing
    expect(words).toContain(printMoney(totals.priceWithTax))
    const secret = [
      totals.cost,
      totals.direct,
      totals.overhead,
      totals.contingency,
      totals.labour,
      totals.material,
    ]
    for (const amount of [...secret, ...lines.map((line) => line.amount)])
      expect(words).not.toContain(printMoney(amount))
    expect(words).not.toMatch(/margin|markup|overhead|contingency/i)
  })

  test('asks for stages that come to the price to the cent', () => {
    const [sheet] = makeSheets(source, ['quote'])
    const table = sheet?.blocks.flatMap((block) =>
      block.kind === 'table' && block.table.id === 'stages' ? [block.table] : [],
    )[0]
    const sum = (table?.rows ?? []).reduce(
      (all, { amount }) => all + Number((amount ?? '').replace(/[$,.]/g, '')),
      0,
    )
    expect(sum).toBe(source.estimate.pricing.totals.priceWithTax)
  })
})

test('hashes differ where the job does', () => {
  const other = paperSource({ ...smallJob('12 ft'), name: 'Łódź Lane ≤ ½' })
  const hash = (each: PaperSource): string =>
    createHash('sha256')
      .update(JSON.stringify(layOutPages(makeSheets(each), aboutOf(each), { paper: 'letter', scale: null })))
      .digest('hex')
  expect(hash(other)).not.toBe(hash(source))
})
