import { describe, expect, test } from 'vitest'
import { aboutOf, layOutPages, makeSheets } from '../../../core/papers/index.ts'
import { metricText } from '../../../core/papers/metric/metric-text.ts'
import { printInches, printLength, ticks } from '../../../core/units/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

describe('lengths in millimetres', () => {
  // 1 in = 25.4 mm exactly (international inch); hand sums
  test.each([
    ['23\'-6 1/2"', '7176 mm'],
    ['10\'-0"', '3048 mm'],
    ['3/8"', '9.5 mm'],
    ['0"', '0 mm'],
    ['-1\'-0"', '-305 mm'],
    ['16 in o.c.', '406 mm o.c.'],
    ['150 1/2 in', '3823 mm'],
    ['between 6.5 to 8.5 in from it', 'between 165 mm to 216 mm from it'],
    ['from 2\'-0" to 4\'-0"', 'from 610 mm to 1219 mm'],
    ['by 9/16" for each inch that the two differ', 'by 14 mm for each 25.4 mm that the two differ'],
    ['1/2 in lag screws at 15 in on centre', '1/2 in lag screws at 381 mm on centre'],
    ['two 1/2 in bolts, 2 in off the edge', 'two 1/2 in bolts, 51 mm off the edge'],
  ])('%j is %j', (words, shown) => {
    expect(metricText(words)).toBe(shown)
  })

  test.each([
    '2x10 Southern Pine No.2',
    '5/4x6',
    '16 ft (30210-16)',
    '200 sq ft',
    '3 in the frame',
    'Scale 1/4 in = 1 ft (1:48)',
    'Table R507.5',
    '40 psf',
    'J7, B1b',
    'nails 10d × 1-1/2 in, galvanised',
    'No.9 × 2-1/2 in',
  ])('%j stays: it is no length', (words) => {
    expect(metricText(words)).toBe(words)
  })

  test('are not what goods are named by: the yard sells a bolt of 1/2 in, in every country that this code is for', () => {
    const source = paperSource(smallJob())
    for (const id of ['order', 'cost'] as const) {
      const words = layOutPages(makeSheets(source, [id]), aboutOf(source), {
        paper: 'a3',
        scale: null,
        metric: true,
      }).flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
      const said = words.join(' ')
      for (const name of [
        'Anchor bolt 1/2 in',
        'Deck screws No.9 × 2-1/2 in',
        'Nails 10d box (3 in × 0.128)',
      ])
        expect(said, id).toContain(name)
    }
  })

  test('are what every printed length comes to, to the millimetre', () => {
    for (let n = 0; n < 20_000; n += 37) {
      const mm = (n * 25.4) / 32
      const shown = mm > 0 && mm < 10 ? Math.round(mm * 10) / 10 : Math.round(mm)
      expect(metricText(printLength(ticks(n)))).toBe(`${shown} mm`)
      expect(metricText(printInches(ticks(n)))).toBe(`${shown} mm`)
    }
  })

  test('come with a bar of metres that is as long as the scale beside it says', () => {
    const source = paperSource(smallJob())
    const pages = layOutPages(makeSheets(source, ['section', 'details']), aboutOf(source), {
      paper: 'a4',
      scale: null,
      metric: true,
    })
    const bars = pages.flatMap(({ marks }) =>
      marks.flatMap((mark, i) => {
        const count = mark.kind === 'text' ? /^(\d+) (m|mm)$/.exec(mark.text) : null
        const [left, right, zero] = [marks[i - 3], marks[i - 2], marks[i - 1]]
        if (zero?.kind !== 'text' || zero.text !== '0') return []
        if (count === null || left?.kind !== 'line' || right?.kind !== 'line') return []
        const caption = marks
          .slice(0, i)
          .flatMap((one) => (one.kind === 'text' ? /\b1:(\d+)/.exec(one.text) : null) ?? [])
          .at(-1)
        const said = Number(count[1]) * (count[2] === 'm' ? 1000 : 1)
        // points to millimetres: 72 to the inch of 25.4 mm
        return [{ drawn: ((right.x1 - left.x1) / 72) * 25.4, said: said / Number(caption) }]
      }),
    )
    expect(bars.length).toBeGreaterThan(3)
    for (const { drawn, said } of bars) expect(drawn).toBeCloseTo(said, 3)
  })

  test('leave no feet and inches on any sheet, but in what is somebody’s own words', () => {
    const name = 'Deck of 12\'-6" for the Lindqvists'
    const source = paperSource({ ...smallJob(), name })
    const sheets = makeSheets(source)
    const pages = layOutPages(sheets, aboutOf(source), { paper: 'a4', scale: null, metric: true })
    const texts = pages.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    )
    expect(texts).toContain(name)
    for (const words of texts.filter((one) => !one.includes(name))) expect(words).not.toMatch(/\d'-\d|\d"/)
    expect(texts.filter((words) => / mm\b/.test(words)).length).toBeGreaterThan(100)
  })
})
