import { expect, test } from 'vitest'
import { type PriceBook, SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { bookGroups, rowsWith } from '../../../renderer/views/price/book-rows.ts'
import { isOldOn, sourceWords } from '../../../renderer/views/price/source-words.ts'

test('everything in a price book is there to be looked through, once', () => {
  const groups = bookGroups(SAMPLE_BOOK)
  const rows = groups.flatMap((group) => group.rows)
  const { lumber, goods, rates, joints } = SAMPLE_BOOK
  const stock = lumber.flatMap((product) => product.stock)
  expect(rows).toHaveLength(stock.length + goods.length + rates.length + joints.length)
  for (const group of groups) expect(new Set(group.rows.map(({ key }) => key)).size).toBe(group.rows.length)
})

test('each price says of which day and whose it is, and rates their hours', () => {
  const book: PriceBook = {
    ...SAMPLE_BOOK,
    goods: SAMPLE_BOOK.goods.map((good) =>
      good.sku === 'uplift-tie' ? { ...good, date: '2026-02-03', supplier: 'Yard B' } : good,
    ),
  }
  const rows = bookGroups(book).flatMap((group) => group.rows)
  const of = (key: string) => rows.find((row) => row.key === key)
  expect(of('uplift-tie')).toMatchObject({
    price: '$1.12 per each',
    source: { date: '2026-02-03', supplier: 'Yard B' },
  })
  expect(of('30210-16')).toMatchObject({
    item: '16\'-0"',
    price: '$23.49 each',
    source: { date: '2026-11-01' },
  })
  // 0.0125 crew hours a board foot by two, as the sample's rate has it
  expect(of('joist')?.price).toMatch(/^0\.0125 h per .*, 2 working$/)
})

test('words are sought in group, code and name, whatever their case', () => {
  const found = rowsWith(bookGroups(SAMPLE_BOOK), ' HANGER 2x10 ')
  expect(found.flatMap(({ rows }) => rows.map(({ code }) => code))).toEqual(['51010'])
  expect(rowsWith(bookGroups(SAMPLE_BOOK), 'no such thing')).toEqual([])
})

test('a price is old after 60 days, not on the sixtieth', () => {
  const source = { date: '2026-01-01', supplier: '' }
  expect(sourceWords(source)).toBe('of 2026-01-01')
  // 31 + 28 days reach 1 March; 60 days are 2 March
  expect([isOldOn('2026-03-02', source), isOldOn('2026-03-03', source)]).toEqual([false, true])
})
