import { describe, expect, test } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { isOldOn, sourceWords } from '../../../renderer/views/price/source-words.ts'
import { bookAsText, readBookBlock } from '../../../renderer/views/price-book/book-block.ts'
import { bookTable, linesWith } from '../../../renderer/views/price-book/book-table.ts'
import { bookOfSeveral, HILL, YARD } from '../../fixtures/two-suppliers.ts'

const several = bookOfSeveral({ [YARD]: [4000], [HILL]: [6000, 150_000] }, [
  { supplier: HILL, goods: { 'joist-hanger-2x10': 200 }, boards: { '30210-16': 2200 } },
])

describe('the tables of a price book', () => {
  test('hold every price, rate and joint once, by keys of their own', () => {
    const parts = (['boards', 'goods', 'hours', 'joints'] as const).map(
      (part) => bookTable(SAMPLE_BOOK, part).lines,
    )
    const { lumber, goods, rates, joints } = SAMPLE_BOOK
    const stock = lumber.flatMap((product) => product.stock)
    expect(parts.map((lines) => lines.length)).toEqual([
      stock.length,
      goods.length,
      rates.length + 2,
      joints.length,
    ])
    for (const lines of parts) expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length)
  })

  test('have a line for each supplier of a thing, with its own price, day and code', () => {
    const lines = linesWith(bookTable(several, 'boards').lines, '2x10 16\'-0"', '')
    expect(lines.map(({ cells }) => cells.slice(1, 5))).toEqual([
      [YARD, '$23.49', '2026-11-01', '30210-16'],
      [HILL, '$22.00', '2026-11-01', '30210-16'],
    ])
    const count = SAMPLE_BOOK.goods.length + SAMPLE_BOOK.lumber.flatMap(({ stock }) => stock).length
    expect(bookTable(several, 'suppliers').lines.map(({ cells }) => cells)).toEqual([
      [YARD, '$40.00', '', `${count}`],
      [HILL, '$60.00', '$1,500.00', '2'],
    ])
  })

  test('are searched by words in any column, and by supplier', () => {
    const { lines } = bookTable(several, 'goods')
    const found = linesWith(lines, ' HANGER 2x10 ', '')
    expect(new Set(found.map(({ supplier }) => supplier))).toEqual(new Set([YARD, HILL]))
    for (const { label } of found) expect(label).toMatch(/hanger.*2x10/i)
    expect(linesWith(lines, ' HANGER 2x10 ', HILL)).toHaveLength(1)
    expect(linesWith(lines, 'no such thing', '')).toEqual([])
  })
})

describe('a block of cells', () => {
  const table = bookTable(SAMPLE_BOOK, 'joints')

  test('is copied with its headings as a spreadsheet takes it', () => {
    expect(bookAsText(table, table.lines).split(/\r?\n/).slice(0, 2)).toEqual([
      'Joint\tMaterial\tWorker minutes',
      'Nails and plate at a beam joint\t$2.50\t6',
    ])
  })

  test('is read row by row from the cell where one stands, empty cells leaving theirs alone', () => {
    const read = readBookBlock('3.00\t\n\t9\n', table, table.lines.slice(1), 1)
    expect(read).toEqual({
      ok: true,
      value: [
        { kind: 'set', row: { of: 'joint', kind: 'rim' }, field: 'material', text: '3.00' },
        { kind: 'set', row: { of: 'joint', kind: 'ledger' }, field: 'minutes', text: '9' },
      ],
    })
  })

  test('that was copied here is pasted back whole, and over a name that differs it is refused', () => {
    expect(readBookBlock(bookAsText(table, table.lines), table, table.lines, 0)).toMatchObject({
      error: 'Nothing was pasted: the block says what stands here already.',
    })
    const rows = 'Nails and plate at a beam joint\t$2.60\t6'
    expect(readBookBlock(rows, table, table.lines, 0)).toMatchObject({ ok: true, value: [{ text: '$2.60' }] })
    expect(readBookBlock('Glue\t$2.60\t6', table, table.lines, 0)).toMatchObject({
      ok: false,
      error: expect.stringContaining('“Joint” is not written over here'),
    })
    expect(readBookBlock('1\t2\t3', table, table.lines, 1)).toMatchObject({ ok: false })
    expect(readBookBlock('1\n2\n3\n4\n5', table, table.lines, 1)).toMatchObject({
      ok: false,
      error: 'Nothing was pasted: the block has 5 rows, and 4 rows follow here.',
    })
  })
})

test('a price is old after 60 days, not on the sixtieth', () => {
  const source = { date: '2026-01-01', supplier: '' }
  expect(sourceWords(source)).toBe('of 2026-01-01')
  // 31 + 28 days reach 1 March; 60 days are 2 March
  expect([isOldOn('2026-03-02', source), isOldOn('2026-03-03', source)]).toEqual([false, true])
})
