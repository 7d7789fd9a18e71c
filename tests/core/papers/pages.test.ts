import { describe, expect, test } from 'vitest'
import {
  type About,
  type Block,
  type Drawing,
  layOutPages,
  PAPERS,
  type Page,
  type PaperTable,
  type Primitive,
  type Sheet,
} from '../../../core/papers/index.ts'

const ABOUT: About = {
  job: 'Heron Lane',
  firm: 'Plumb & Level',
  logo: null,
  revision: '7',
  date: '2026-01-31',
  prices: 'Prices: spring, 2026-01-01',
  code: 'IRC 2021',
}

const sheet = (blocks: readonly Block[], across = false): Sheet => ({
  id: 'checks',
  title: 'A sheet',
  audience: 'office',
  across,
  blocks,
})
const laidOut = (blocks: readonly Block[], across = false): readonly Page[] =>
  layOutPages([sheet(blocks, across)], ABOUT, { paper: 'letter', scale: null })
const textsOf = (page: Page): readonly string[] =>
  page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))

const table = (rows: PaperTable['rows']): PaperTable => ({
  id: 't',
  title: 'Lines',
  columns: [
    { key: 'a', label: 'What', align: 'left' },
    { key: 'b', label: 'Amount', align: 'right' },
  ],
  rows,
})

function extent(page: Page): { left: number; right: number; top: number; bottom: number } {
  const xs: number[] = []
  const ys: number[] = []
  for (const mark of page.marks) {
    if (mark.kind === 'text') {
      const left =
        mark.anchor === 'start'
          ? mark.x
          : mark.anchor === 'end'
            ? mark.x - mark.width
            : mark.x - mark.width / 2
      if (mark.turned) {
        xs.push(mark.x)
        ys.push(mark.y)
      } else {
        xs.push(left, left + mark.width)
        ys.push(mark.y)
      }
    }
    if (mark.kind === 'line') {
      xs.push(mark.x1, mark.x2)
      ys.push(mark.y1, mark.y2)
    }
    if (mark.kind === 'path') for (const [x, y] of mark.points) xs.push(x) && ys.push(y)
    if (mark.kind === 'circle')
      xs.push(mark.cx - mark.r, mark.cx + mark.r) && ys.push(mark.cy - mark.r, mark.cy + mark.r)
  }
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }
}

describe('pages', () => {
  test('say their number, the job, its revision, the date, the prices and the code', () => {
    const pages = laidOut([
      { kind: 'text', text: 'one' },
      { kind: 'page break' },
      { kind: 'text', text: 'two' },
    ])
    expect(pages.map(({ number, of }) => [number, of])).toEqual([
      [1, 2],
      [2, 2],
    ])
    for (const page of pages) {
      const words = textsOf(page).join('\n')
      expect(words).toContain(`Page ${page.number} of 2`)
      for (const each of [
        'Heron Lane',
        'revision 7',
        '2026-01-31',
        'spring, 2026-01-01',
        'IRC 2021',
        'Plumb & Level',
      ])
        expect(words).toContain(each)
    }
  })

  test('keep the lines to sign on together, with what stands over them', () => {
    const lines = ['For the firm, and date', 'The customer, and date']
    for (let count = 30; count < 60; count += 1) {
      const pages = laidOut([
        ...Array.from({ length: count }, (_, i): Block => ({ kind: 'text', text: `line ${i + 1}` })),
        { kind: 'text', tone: 'soft', text: 'Subject to the building permit.' },
        { kind: 'signatures', lines },
      ])
      const signed = pages.map(textsOf).find((texts) => texts.includes(lines[0] ?? ''))
      expect(signed).toEqual(expect.arrayContaining(['Subject to the building permit.', ...lines]))
    }
  })

  test('write no figure of a chain of dimensions over another, however short its parts', () => {
    const stops = [13, 13.9, 15.8, 19.4, 20.3, 22].map((feet) => feet * 384)
    const primitives = stops.slice(1).map((x2, i): Primitive => {
      const x1 = stops[i] ?? 0
      const words = { id: `part ${i}`, text: `${i}'-10 3/4"` }
      return { kind: 'dimension', layer: 'dimensions', x1, y1: 0, x2, y2: 0, offset: 0, ...words }
    })
    const drawing: Drawing = { id: 'd', title: 'D', x0: 0, y0: -384, x1: 24 * 384, y1: 384, primitives }
    const [page] = layOutPages([sheet([{ kind: 'drawing', drawing, layers: ['dimensions'] }])], ABOUT, {
      paper: 'letter',
      scale: 64,
    })
    const figures = (page?.marks ?? []).flatMap((mark) =>
      mark.kind === 'text' && mark.id.startsWith('part')
        ? [{ ...mark, left: mark.x - { start: 0, middle: 0.5, end: 1 }[mark.anchor] * mark.width }]
        : [],
    )
    expect(figures).toHaveLength(5)
    const over = figures.flatMap((a, i) =>
      figures.slice(i + 1).filter((b) => {
        const apart = a.left + a.width < b.left || b.left + b.width < a.left
        return !apart && Math.abs(a.y - b.y) < a.size
      }),
    )
    expect(over).toEqual([])
  })

  test('cut a title only where the job’s name leaves no room for it', () => {
    const titled = (title: string, job: string): readonly string[] => {
      const blocks: readonly Block[] = [{ kind: 'text', text: 'one' }, { kind: 'page break' }]
      const pages = layOutPages(
        [{ ...sheet([...blocks, { kind: 'text', text: 'two' }]), title }],
        { ...ABOUT, job },
        { paper: 'letter', scale: null },
      )
      return pages.map((page) => textsOf(page)[0] ?? '')
    }
    expect(titled('Cost breakdown, internal', 'Heron Lane')[1]).toBe('Cost breakdown, internal, continued')
    expect(titled('Cost breakdown, internal', 'W'.repeat(80))[1]).toMatch(/^Cost breakdown, .*…$/)
  })

  test('say that no date was stated where none was', () => {
    const [page] = layOutPages([sheet([])], { ...ABOUT, date: '' }, { paper: 'a4', scale: null })
    expect(page && textsOf(page).join('\n')).toContain('date not stated')
  })

  test.each(PAPERS)('keep everything inside the %s sheet, whatever the texts', (paper) => {
    const long = 'word '.repeat(3000)
    const blocks: readonly Block[] = [
      { kind: 'heading', text: long },
      { kind: 'caution', text: long },
      { kind: 'facts', rows: [[long.slice(0, 500), long]] },
      { kind: 'steps', items: [{ text: long, notes: [long], cautions: [long] }] },
      { kind: 'checklist', items: [long] },
      {
        kind: 'table',
        table: table([{ a: long, b: 'x'.repeat(10_000) }]),
        tick: true,
        strong: [0],
        empty: '',
      },
      { kind: 'signatures', lines: [long] },
    ]
    const about = { ...ABOUT, job: long, firm: long, revision: long, prices: long }
    for (const across of [false, true]) {
      for (const page of layOutPages([sheet(blocks, across)], about, { paper, scale: null })) {
        const { left, right, top, bottom } = extent(page)
        expect(left).toBeGreaterThanOrEqual(30)
        expect(right).toBeLessThanOrEqual(page.width - 30)
        expect(top).toBeGreaterThanOrEqual(20)
        expect(bottom).toBeLessThanOrEqual(page.height - 18)
      }
    }
  })

  test('carry a table on with its headings, every row once', () => {
    const rows = Array.from({ length: 200 }, (_, i) => ({ a: `row ${i + 1}`, b: `$${i}.00` }))
    const pages = laidOut([{ kind: 'table', table: table(rows), empty: '' }])
    expect(pages.length).toBeGreaterThan(3)
    const words = pages.flatMap(textsOf)
    for (const { a } of rows) expect(words.filter((word) => word === a)).toHaveLength(1)
    for (const page of pages) expect(textsOf(page)).toContain('Amount')
  })

  test('carry on a row that is longer than a page, with every letter', () => {
    const letters = 'abcdefghij'.repeat(4000)
    const pages = laidOut([{ kind: 'table', table: table([{ a: letters, b: '1' }]), empty: '' }])
    const words = pages.flatMap(textsOf).filter((word) => /^[a-j]+$/.test(word))
    expect(words.join('') === letters).toBe(true)
  })

  test('say what an empty table would have held', () => {
    const [page] = laidOut([{ kind: 'table', table: table([]), empty: 'No lines.' }])
    expect(page && textsOf(page)).toContain('No lines.')
  })

  test('never break a figure of a column in two', () => {
    const figure = '27\'-1 1/4"'
    const rows = [{ a: 'word '.repeat(300), b: figure }]
    const [page] = laidOut([{ kind: 'table', table: table(rows), empty: '' }])
    expect(page && textsOf(page)).toContain(figure)
  })
})
