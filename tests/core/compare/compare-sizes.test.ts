import { expect, test } from 'vitest'
import { compareSizes, compareWidths } from '../../../core/compare/index.ts'
import { DEMO_JOB, setField } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { loadEngine } from '../../../main/workers/lp/index.ts'

const engine = await loadEngine()
const side = (from: number, to: number) => ({ from: feet(from), to: feet(to), step: feet(1) })
const job = setField(setField(DEMO_JOB, 'size.width', '12 ft'), 'size.depth', '10 ft')

test('every size of the grid comes once, the deck’s own first and the others nearest first', () => {
  const rows = [...compareSizes(job, SAMPLE_BOOK, engine, { width: side(11, 13), depth: side(9, 10) })]
  expect(rows.map(({ width, depth }) => [width / feet(1), depth / feet(1)])).toEqual([
    [12, 10],
    [12, 9],
    [11, 10],
    [13, 10],
    [11, 9],
    [13, 9],
  ])
})

test('a size says what the deck stated in that size says', () => {
  const rows = [...compareSizes(job, SAMPLE_BOOK, engine, { width: side(12, 12), depth: side(9, 11) })]
  for (const row of rows) {
    const stated = setField(
      job,
      'size.depth',
      row.depth === feet(9) ? '9 ft' : row.depth === feet(10) ? '10 ft' : '11 ft',
    )
    const [same] = compareWidths(
      stated,
      SAMPLE_BOOK,
      engine,
      { from: feet(12), to: feet(12), step: inches(6) },
      { quickFirst: true },
    )
    expect(same).toEqual(row)
  }
})

test('a deck with an outline of corners has no grid, and a size that cannot be built says why', () => {
  const grid = { width: side(12, 12), depth: side(10, 10) }
  const outline = setField(DEMO_JOB, 'shape.outline', '0 0, 14 ft 0, 14 ft 10 ft, 0 10 ft')
  expect([...compareSizes(outline, SAMPLE_BOOK, engine, grid)]).toEqual([])
  const wide = { width: { from: feet(400), to: feet(400), step: feet(1) }, depth: side(10, 10) }
  expect([...compareSizes(job, SAMPLE_BOOK, engine, wide)].map(({ fault }) => fault)).toEqual([
    expect.stringMatching(/\w/),
  ])
})
