import { describe, expect, test } from 'vitest'
import { readDelimited } from '../../../core/cut-list/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { stepFrom } from '../../../renderer/parts/use-grid.ts'
import { linesAsText, readBlock } from '../../../renderer/views/price/line-blocks.ts'
import { readFigure } from '../../../renderer/views/price/line-values.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const HANGER = 'good-joist-hanger-2x8'
const lines = estimateOf(smallJob('11 ft 10 in'), SAMPLE_BOOK).pricing?.lines ?? []
const at = lines.findIndex(({ id }) => id === HANGER)
const below = lines.slice(at)
const [hanger] = below
if (hanger === undefined) throw new Error('there are hangers')

describe('keys of a table that is walked', () => {
  const rows = ['a', 'b', 'c']
  const press = (key: string, ctrlKey = false) => ({ key, ctrlKey, metaKey: false })
  test.each([
    [press('ArrowDown'), { row: 'c', column: 1 }],
    [press('ArrowUp'), { row: 'a', column: 1 }],
    [press('ArrowLeft'), { row: 'b', column: 0 }],
    [press('ArrowRight'), { row: 'b', column: 2 }],
    [press('Home'), { row: 'b', column: 0 }],
    [press('End'), { row: 'b', column: 3 }],
    [press('Home', true), { row: 'a', column: 0 }],
    [press('End', true), { row: 'c', column: 3 }],
    [press('PageDown'), { row: 'c', column: 1 }],
    [press('x'), null],
    [press('ArrowDown', true), null],
  ])('%j from the middle leads to %j', (key, to) => {
    expect(stepFrom({ row: 'b', column: 1 }, key, rows, 4)).toEqual(to)
  })

  test('the edges stop, they do not wrap', () => {
    expect(stepFrom({ row: 'c', column: 3 }, press('ArrowDown'), rows, 4)).toEqual({ row: 'c', column: 3 })
    expect(stepFrom({ row: 'c', column: 3 }, press('ArrowRight'), rows, 4)).toEqual({ row: 'c', column: 3 })
  })
})

describe('a figure typed over', () => {
  test('is read as it is written, money to 1/100 cent', () => {
    expect(readFigure(hanger, 'thousandths', '1,040')).toEqual({
      ok: true,
      value: { thousandths: 1_040_000 },
    })
    expect(readFigure(hanger, 'price', '$2.1025')).toEqual({ ok: true, value: { price: 21_025 } })
  })

  test.each([
    ['thousandths', '7.5', '7.5 each cannot be had. State a whole number.'],
    ['thousandths', 'ten', 'This is not a number: write a number such as 40 or 12.5.'],
    ['price', '-2', 'A price is not below zero: write it as $2.39 or $0.1026.'],
    ['price', '999999.99', 'This comes to more than $4,000,000.00. State a smaller quantity or price.'],
  ] as const)('%s %j says what is wrong and what would be right', (figure, text, sentence) => {
    expect(readFigure(hanger, figure, text)).toEqual({ ok: false, error: sentence })
  })
})

describe('blocks between the lines and a spreadsheet', () => {
  test('every line is copied with its figures, tab by tab', () => {
    const copied = readDelimited(linesAsText(lines))
    const rows = copied.ok ? copied.value.map(({ cells }) => cells) : []
    expect(rows).toHaveLength(lines.length + 1)
    expect(rows[at + 1]).toEqual([
      hanger.label,
      hanger.code,
      `${hanger.thousandths / 1000}`,
      hanger.unit,
      '$1.89',
      `$${(hanger.amount / 100).toFixed(2)}`,
    ])
  })

  test('a block is pasted from the cell on, row by row; an empty figure leaves its own alone', () => {
    expect(readBlock('7\t$2\n\t3.25\r\n', below, 1)).toEqual({
      ok: true,
      value: [
        { line: HANGER, change: { thousandths: 7000, price: 20_000 } },
        { line: below[1]?.id, change: { price: 32_500 } },
      ],
    })
    expect(readBlock('2.5', below, 2)).toEqual({
      ok: true,
      value: [{ line: HANGER, change: { price: 25_000 } }],
    })
  })

  test.each([
    ['7\t2\t3', 1, 'go into the columns Quantity and Each'],
    ['7', 0, 'go into the columns Quantity and Each'],
    ['7\t2', 2, 'go into the columns Quantity and Each'],
    ['1\n'.repeat(1000), 1, 'the block has 1000 rows'],
    ['7\n7.5', 1, 'Row 2'],
  ])('%j in column %d is refused as a whole, with the reason', (text, column, reason) => {
    const read = readBlock(text, below, column)
    expect(read.ok ? '' : read.error).toContain(reason)
  })
})
