import { describe, expect, test } from 'vitest'
import {
  type Block,
  type Drawing,
  layOutPages,
  PAPERS,
  type Page,
  type PaperTable,
  type Primitive,
  type Sheet,
} from '../../../core/papers/index.ts'
import { ABOUT } from '../../fixtures/about.ts'

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

  test('say revision and date beside a job of a very long name, which gives way to them', () => {
    const about = {
      ...ABOUT,
      job: 'Mississippi'.repeat(18),
      revision: 'x'.repeat(40),
      code: 'IRC '.repeat(9),
    }
    const [page] = layOutPages([sheet([{ kind: 'text', text: 'one' }])], about, {
      paper: 'letter',
      scale: null,
    })
    const words = page === undefined ? '' : textsOf(page).join('\n')
    for (const each of ['Mississippi', `revision ${'x'.repeat(40)}`, '2026-01-31', 'Page 1 of 1'])
      expect(words).toContain(each)
    const { left = 0, right = 0 } = page === undefined ? {} : extent(page)
    expect(left).toBeGreaterThanOrEqual(36)
    expect(right).toBeLessThanOrEqual(612 - 36)
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

  test('draw no line through a number: what is written comes after all that is drawn', () => {
    const post = { kind: 'text', id: 'p', layer: 'posts', x: 0, y: 0, text: '7' } as const
    const joist = { kind: 'line', id: 'j', layer: 'joists', x1: -384, y1: 0, x2: 384, y2: 0 } as const
    const primitives: readonly Primitive[] = [
      { ...post, anchor: 'middle', size: 'small' },
      { ...joist, weight: 'medium', stroke: 'solid' },
    ]
    const drawing: Drawing = { id: 'd', title: 'D', x0: -384, y0: -384, x1: 384, y1: 384, primitives }
    const [page] = laidOut([{ kind: 'drawing', drawing, layers: ['posts', 'joists'] }])
    const ids = (page?.marks ?? []).map(({ id }) => id)
    expect(ids.indexOf('p')).toBeGreaterThan(ids.indexOf('j'))
  })

  test('stroke the joint of a flat board within its faces, and that of one on edge past them', () => {
    const course = (at: number, half: number): Primitive => ({
      kind: 'joint',
      id: `joint ${at}`,
      layer: 'joints',
      x: 0,
      y: at,
      along: 'x',
      half,
    })
    // two courses of 5-1/2 in, 1/8 in apart, jointed at one place; a joist on edge is 1-1/2 in thick
    const primitives = [course(0, 88), course(180, 88), course(900, 24)]
    const drawing: Drawing = { id: 'd', title: 'D', x0: -384, y0: -384, x1: 384, y1: 1200, primitives }
    const [page] = laidOut([{ kind: 'drawing', drawing, layers: ['joints'] }])
    const scale = page?.drawings[0]?.scale ?? 0
    const strokes = (page?.marks ?? []).flatMap((mark) =>
      mark.kind === 'line' && mark.id.startsWith('joint') ? [mark] : [],
    )
    expect(strokes).toHaveLength(3)
    const [first, second, onEdge] = strokes
    expect((second?.y1 ?? 0) - (first?.y2 ?? 0)).toBeGreaterThan(4 * scale)
    expect((first?.y2 ?? 0) - (first?.y1 ?? 0)).toBeLessThan(2 * 88 * scale)
    expect((onEdge?.y2 ?? 0) - (onEdge?.y1 ?? 0)).toBeGreaterThan(2 * 24 * scale)
  })

  test('write the figures of an upright chain beside its short parts, clear of one another and of the marks', () => {
    const stops = [0, 21.5, 37, 42, 78].map((each) => each * 32)
    const chain = stops.slice(1).map((y2, i): Primitive => {
      const words = { id: `part ${i}`, text: `1'-${i} 1/2"` }
      const line = { x1: 0, y1: stops[i] ?? 0, x2: 0, y2, offset: 24 * 32 }
      return { kind: 'dimension', layer: 'dimensions', ...line, ...words }
    })
    const whole: Primitive = {
      kind: 'dimension',
      id: 'part whole',
      layer: 'dimensions',
      x1: 0,
      y1: 0,
      x2: 0,
      y2: 42 * 32,
      offset: 40 * 32,
      text: `3'-6"`,
    }
    const primitives = [...chain, whole]
    const drawing: Drawing = {
      id: 'd',
      title: 'D',
      x0: -384,
      y0: -384,
      x1: 8 * 384,
      y1: 8 * 384,
      primitives,
    }
    for (const scale of [24, 32, 48, 64]) {
      const [page] = layOutPages([sheet([{ kind: 'drawing', drawing, layers: ['dimensions'] }])], ABOUT, {
        paper: 'letter',
        scale,
      })
      const rooms = (page?.marks ?? []).flatMap((mark) => {
        if (mark.kind !== 'text' || !mark.id.startsWith('part')) return []
        const { x, y, width, anchor, turned, size } = mark
        const left = x - { start: 0, middle: 0.5, end: 1 }[anchor] * width
        const high = size * 0.7
        return [
          turned
            ? { x0: x - high, x1: x, y0: y - width / 2, y1: y + width / 2 }
            : { x0: left, x1: left + width, y0: y - high, y1: y },
        ]
      })
      expect(rooms).toHaveLength(5)
      const over = rooms.flatMap((a, i) =>
        rooms.slice(i + 1).filter((b) => a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0),
      )
      expect(over, `at 1:${scale}`).toEqual([])
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

describe('blocks that belong together', () => {
  const many = (count: number): PaperTable =>
    table(Array.from({ length: count }, (_, i) => ({ a: `row ${i + 1}`, b: `$${i + 1}.00` })))
  const placesOf = (page: Page | undefined): readonly { text: string; x: number; y: number }[] =>
    (page?.marks ?? []).flatMap((mark) =>
      mark.kind === 'text' && mark.text.startsWith('row ') ? [{ text: mark.text, x: mark.x, y: mark.y }] : [],
    )

  test('stand in columns of like height where a page has room for them, and what follows stands under both', () => {
    const [page] = laidOut([
      { kind: 'table', columns: 'c', table: many(41), empty: '' },
      { kind: 'text', text: 'after them' },
    ])
    const rows = placesOf(page)
    expect(rows.map(({ text }) => text)).toEqual(Array.from({ length: 41 }, (_, i) => `row ${i + 1}`))
    const columns = [...Map.groupBy(rows, ({ x }) => x).values()]
    expect(columns.length).toBeGreaterThan(1)
    const counts = columns.map(({ length }) => length)
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(3)
    const after = page?.marks.find((mark) => mark.kind === 'text' && mark.text === 'after them')
    for (const { y } of rows) expect(after?.kind === 'text' && after.y > y).toBe(true)
  })

  test('part no table that is to stay whole: what belongs to it stands beside it', () => {
    const rows = Array.from({ length: 6 }, (_, i) => ({ a: `row ${i}`, b: '4 ft' }))
    const [page, ...more] = laidOut(
      [
        { kind: 'text', text: 'Before them' },
        { kind: 'table', columns: 'c', whole: true, table: table(rows), empty: '' },
        { kind: 'text', columns: 'c', text: 'Words about it, '.repeat(20) },
      ],
      true,
    )
    expect(more).toEqual([])
    const xOf = (words: string) =>
      page?.marks.flatMap((mark) =>
        mark.kind === 'text' && mark.text.startsWith(words) ? [Math.round(mark.x)] : [],
      ) ?? []
    expect(new Set(xOf('row '))).toEqual(new Set([40]))
    expect(Math.min(...xOf('Words'))).toBeGreaterThan(300)
  })

  test('stay on the page where there is room for them side by side, however short', () => {
    const pages = laidOut([
      { kind: 'text', text: 'before them' },
      { kind: 'table', columns: 'c', table: many(1), empty: '' },
      { kind: 'table', columns: 'c', table: { ...many(4), title: 'Others' }, empty: '' },
    ])
    expect(pages).toHaveLength(1)
    const heads = (pages[0]?.marks ?? []).flatMap((mark) =>
      mark.kind === 'text' && ['Lines', 'Others'].includes(mark.text) ? [mark] : [],
    )
    expect(heads).toHaveLength(2)
    expect(heads[0]?.y).toBe(heads[1]?.y)
    expect(heads[0]?.x).not.toBe(heads[1]?.x)
  })

  test('go on in the columns of the next page, every row once and in its order', () => {
    const pages = laidOut([{ kind: 'table', columns: 'c', table: many(400), empty: '' }])
    expect(pages.length).toBeLessThan(laidOut([{ kind: 'table', table: many(400), empty: '' }]).length)
    expect(pages.flatMap((page) => placesOf(page).map(({ text }) => text))).toEqual(
      Array.from({ length: 400 }, (_, i) => `row ${i + 1}`),
    )
    for (const page of pages) {
      const { right, bottom } = extent(page)
      expect([right <= page.width - 39, bottom <= page.height - 20]).toEqual([true, true])
    }
  })

  test('stand one under the other where a cell would be broken for columns', () => {
    const wide = table([
      { a: 'row with words that are far longer than half of a page is wide, '.repeat(2), b: '1' },
    ])
    const [page] = laidOut([
      { kind: 'table', columns: 'c', table: many(3), empty: '' },
      { kind: 'table', columns: 'c', table: wide, empty: '' },
    ])
    expect(new Set(placesOf(page).map(({ x }) => x)).size).toBe(1)
  })

  test('go to the next page as one where this one has no room for all of them', () => {
    const lines = Array.from({ length: 30 }, (_, i): Block => ({ kind: 'text', text: `line ${i + 1}` }))
    const items = Array.from({ length: 20 }, (_, i) => `item ${i + 1}`)
    const pages = laidOut([
      ...lines,
      { kind: 'heading', together: 'card', text: 'A card' },
      { kind: 'checklist', together: 'card', items },
    ])
    const card = pages.map(textsOf).filter((texts) => items.some((item) => texts.includes(item)))
    expect(card).toHaveLength(1)
    expect(card[0]).toEqual(expect.arrayContaining(['A card', ...items]))
  })

  test('keep their last lines to sign on, however much of the page is taken before them', () => {
    const items = Array.from({ length: 8 }, (_, i) => `item ${i + 1}`)
    for (let taken = 5; taken < 45; taken += 1) {
      const lines = Array.from({ length: taken }, (_, i): Block => ({ kind: 'text', text: `line ${i + 1}` }))
      const pages = laidOut([
        ...lines,
        { kind: 'heading', together: 'card', text: 'A card' },
        { kind: 'checklist', together: 'card', items },
        { kind: 'signatures', together: 'card', lines: ['Seen by', 'Asked for'] },
      ]).map(textsOf)
      const card = pages.filter((texts) => texts.includes('A card') || texts.includes('Seen by'))
      expect(card, `${taken} lines before it`).toHaveLength(1)
    }
  })

  test('that are drawings are drawn to the scale of the one that needs the smallest', () => {
    const drawing = (id: string, size: number): Drawing => ({
      id,
      title: id,
      x0: 0,
      y0: 0,
      x1: size,
      y1: size / 4,
      primitives: [],
    })
    const blocksOf = (...feet: readonly number[]): readonly Block[] =>
      feet.map((size, i) => ({
        kind: 'drawing',
        alike: 'both',
        drawing: drawing(`d${i}`, size * 384),
        layers: [],
      }))
    const scalesOf = (...feet: readonly number[]): readonly number[] =>
      laidOut(blocksOf(...feet), true).flatMap((page) =>
        page.drawings.map(({ scale }) => Math.round(72 / 32 / scale)),
      )
    // 24 ft in the 9.9 in between the margins of Letter: 3/8 in to the foot takes 9 in, 1/2 in would take 12
    expect(scalesOf(8, 24)).toEqual([32, 32])
    // but not below the 1/4 in to the foot of a permit set for one that needs less: 60 ft at 1/8 in take 7.5 in
    expect(scalesOf(8, 60)).toEqual([48, 96])
    const blocks = blocksOf(8, 24)
    const words = laidOut(blocks, true).flatMap(textsOf)
    expect(words.some((text) => text.includes('does not fit'))).toBe(false)
  })
})
