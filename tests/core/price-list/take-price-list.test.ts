import { describe, expect, test } from 'vitest'
import { readDelimited } from '../../../core/cut-list/index.ts'
import { guessPriceColumns, type PriceListRequest, takePriceList } from '../../../core/price-list/index.ts'
import {
  readPriceBook,
  SAMPLE_BOOK,
  sourceOf,
  stalePrices,
  writePriceBook,
} from '../../../core/pricing/index.ts'
import { feet } from '../../../core/units/index.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const take = (text: string, more: Partial<PriceListRequest> = {}) =>
  takePriceList(SAMPLE_BOOK, {
    text,
    columns: null,
    date: '2026-11-20',
    supplier: 'Yard of the north',
    leaveOutUnknown: false,
    beside: false,
    ...more,
  })
const taken = (text: string, more: Partial<PriceListRequest> = {}) => {
  const read = take(text, more)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value
}
const faultsOf = (text: string, more: Partial<PriceListRequest> = {}) => {
  const read = take(text, more)
  return read.ok ? [] : read.error.map(({ row, column, message }) => [row, column, message])
}
const stockOf = (book: typeof SAMPLE_BOOK, size: string, long: number) =>
  book.lumber.find(({ product }) => product.size === size)?.stock.find(({ length }) => length === feet(long))

describe('a list of prices', () => {
  test('changes what it speaks of, by the yard’s code or by name, and keeps the rest of the book', () => {
    const { book, changes, ignored } = taken(
      'Item code;Description;Length;Net price;Remark\n30210-16;;;$24.99;x\n;2 x 12 Southern Pine No.2, treated;18;40\n51010;Joist hanger for a 2x10, galvanised;;2.4550;\n',
    )
    expect(stockOf(book, '2x10', 16)).toMatchObject({
      price: 2499,
      code: '30210-16',
      date: '2026-11-20',
      supplier: 'Yard of the north',
    })
    expect(stockOf(book, '2x12', 18)?.price).toBe(4000)
    expect(book.goods.find(({ code }) => code === '51010')).toMatchObject({
      price: 24_550,
      date: '2026-11-20',
    })
    expect(changes.map(({ row, before, after }) => [row, before, after])).toEqual([
      [2, 234_900, 249_900],
      [3, 374_900, 400_000],
      [4, 23_900, 24_550],
    ])
    expect(ignored).toEqual(['Remark'])
    const untouched = (one: typeof SAMPLE_BOOK) => ({
      goods: one.goods.filter(({ code }) => code !== '51010'),
      lumber: one.lumber.filter(({ product }) => !['2x10', '2x12'].includes(product.size)),
      rates: one.rates,
      joints: one.joints,
    })
    expect(untouched(book)).toEqual(untouched(SAMPLE_BOOK))
  })

  test('adds a stock length that the book did not have, in its place', () => {
    const { book, changes } = taken('product,length,price\n2x4,22 ft,16.10')
    expect(stockOf(book, '2x4', 22)).toMatchObject({ price: 1610, code: '30204-22' })
    expect(changes[0]?.before).toBeNull()
    const lengths = book.lumber[0]?.stock.map(({ length }) => length) ?? []
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b))
  })

  test('is priced with: lines follow, and say of which day and whose their price is', () => {
    const { book } = taken('code,price,date,supplier\n51008,9.99,11/2/2026,Ironmonger')
    const job = smallJob('11 ft 10 in')
    const line = estimateOf(job, book).pricing?.lines.find(({ id }) => id === 'good-joist-hanger-2x8')
    expect(line).toMatchObject({ price: 99_900, source: { date: '2026-11-02', supplier: 'Ironmonger' } })
    const plain = estimateOf(job, SAMPLE_BOOK).pricing?.lines ?? []
    expect(plain.some(({ source }) => source !== undefined)).toBe(false)
  })

  test('comes back from a file as it was taken', () => {
    const { book } = taken('code,price\n51008,9.99\n30210-16,20')
    expect(readPriceBook(JSON.parse(JSON.stringify(writePriceBook(book))))).toEqual({ ok: true, value: book })
  })

  test('is read by columns as they are told, headings or none', () => {
    const { changes } = taken('30210-16;21.5;whatever', { columns: ['code', 'price', 'nothing'] })
    expect(changes.map(({ after }) => after)).toEqual([215_000])
    const sheet = readDelimited('Supplier,UOM,Sku,Each,Each\nA,ea,1,2,3')
    expect(guessPriceColumns(sheet.ok ? sheet.value : [])).toEqual([
      'supplier',
      'unit',
      'code',
      'price',
      'nothing',
    ])
  })

  test('has a heading in its first row even where nobody knows the words', () => {
    const { changes } = taken('Art;Betrag\n51010;2.5', { columns: ['code', 'price'] })
    expect(changes.map(({ row }) => row)).toEqual([2])
  })

  test('leaves out what the book does not know only where it is asked to', () => {
    const text = 'code,item,price\nP-1,White paint,30\n51010,,2.5'
    expect(faultsOf(text)).toEqual([[2, 1, 'the price book has no “P-1”']])
    const { changes, leftOut } = taken(text, { leaveOutUnknown: true })
    expect(changes).toHaveLength(1)
    expect(leftOut).toEqual(['White paint'])
  })
})

describe('a list with anything wrong in it is refused as a whole, each fault at its row and column', () => {
  test.each([
    ['', 0, 0, 'the list is empty'],
    ['code,length\n51010,4', 1, 0, 'no column is known to hold the prices'],
    ['remark,price\n51010,4', 1, 0, 'no column is known to say what the prices are of'],
    ['code,price\n51010,four', 2, 2, '“four”: this is not a price in dollars'],
    ['code,price\n51010,0', 2, 2, '“0” is no price'],
    ['code,price\n51010,-3', 2, 2, '“-3”: a price is not below zero'],
    ['code,price\n30210-16,21.505', 2, 2, 'a board costs whole cents'],
    ['item,price\n2x10,21', 2, 0, 'no length of 2x10 Southern Pine No.2, treated is named'],
    ['code,length,price\n30210-16,12,21', 2, 2, 'the code is that of 16\'-0", and the row says 12\'-0"'],
    ['code,unit,price\n52020,each,21', 2, 2, 'the price is per each'],
    ['code,item,price\n51010,2x10,21', 2, 2, 'the code is that of Joist hanger'],
    ['code,price,date\n51010,21,31/31/2026', 2, 3, '“31/31/2026” is no day'],
    ['code,price\n51010,2\n51010,3', 3, 0, 'row 2 prices Joist hanger for a 2x10, galvanised too'],
    ['code,item,length,price\n30212-16,2x4,22,9', 2, 2, 'the code is that of 2x12'],
    ['code,price\n"51010,2', 2, 1, 'a quotation mark opens this cell'],
    ['code,price\n,2', 2, 0, 'this row names nothing'],
  ])('%j', (text, row, column, message) => {
    const [first] = faultsOf(text)
    expect(first?.slice(0, 2)).toEqual([row, column])
    expect(first?.[2]).toContain(message)
  })

  test('a list of no day is refused, unless each row has its own', () => {
    expect(faultsOf('code,price\n51010,2', { date: '' })).toEqual([[0, 0, 'the list is of no day']])
    expect(faultsOf('code,price\n51010,2', { date: '2026-02-30' })[0]?.[2]).toBe('the list is of no day')
    expect(faultsOf('code,price,date\n51010,2,2026-02-03', { date: '' })).toEqual([])
    expect(faultsOf('code,price,date\n51010,2,', { date: '' })).toEqual([[2, 3, 'the price has no day']])
  })

  test('every fault is told, in the order of the rows', () => {
    expect(faultsOf('code,price\n51010,x\n51010,2\nnone,3\n51010,4').map(([row]) => row)).toEqual([2, 4, 5])
  })
})

test('prices older than 60 days are counted one by one, and the oldest is named', () => {
  expect(stalePrices(SAMPLE_BOOK, '2026-12-31')).toMatchObject({ count: 0 })
  const { book } = taken('code,price\n51010,2\n30210-16,21', { date: '2026-09-01' })
  const stale = stalePrices(book, '2026-11-25')
  expect(stale).toMatchObject({ count: 2, oldest: { date: '2026-09-01', supplier: 'Yard of the north' } })
  expect(stale.of).toBe(SAMPLE_BOOK.goods.length + SAMPLE_BOOK.lumber.flatMap(({ stock }) => stock).length)
  expect(sourceOf(book, {})).toEqual({ date: SAMPLE_BOOK.date, supplier: SAMPLE_BOOK.supplier })
})

describe('a list of another supplier', () => {
  const beside = (text: string, book = SAMPLE_BOOK) => {
    const read = takePriceList(book, {
      text,
      columns: null,
      date: '2026-11-20',
      supplier: 'Hill Top Lumber',
      leaveOutUnknown: false,
      beside: true,
    })
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    return read.value
  }
  const once = beside('code;price\n30210-16;21.10\n51010;2.10\n')

  test('stands beside the prices that are there, and states the supplier with a delivery that is not known', () => {
    expect(stockOf(once.book, '2x10', 16)).toMatchObject({
      price: 2349,
      offers: [{ supplier: 'Hill Top Lumber', price: 2110, code: '30210-16', date: '2026-11-20' }],
    })
    expect(once.book.goods.find(({ code }) => code === '51010')).toMatchObject({
      price: 23_900,
      offers: [{ supplier: 'Hill Top Lumber', price: 21_000 }],
    })
    expect(once.book.suppliers).toEqual([
      { name: SAMPLE_BOOK.supplier, delivery: null, freeFrom: null },
      { name: 'Hill Top Lumber', delivery: null, freeFrom: null },
    ])
    expect(once.changes.map(({ before, after }) => [before, after])).toEqual([
      [null, 211_000],
      [null, 21_000],
    ])
    expect(readPriceBook(JSON.parse(JSON.stringify(writePriceBook(once.book)))).ok).toBe(true)
  })

  test('changes its own prices the next time, and those of nobody else', () => {
    const again = beside('code;price\n30210-16;20.90\n', once.book)
    expect(stockOf(again.book, '2x10', 16)).toMatchObject({ price: 2349, offers: [{ price: 2090 }] })
    expect(again.changes[0]?.before).toBe(211_000)
  })

  test('may name a supplier row by row, each thing once for each of them', () => {
    const { book } = beside('code;price;supplier\n30210-16;20.90;City Lumber\n30210-16;21.50;\n')
    expect(stockOf(book, '2x10', 16)?.offers?.map(({ supplier, price }) => [supplier, price])).toEqual([
      ['City Lumber', 2090],
      ['Hill Top Lumber', 2150],
    ])
  })

  test('sells a length that nobody else has', () => {
    const { book } = beside('item;length;price\n5/4x6 Southern Pine No.2, treated;24;28\n')
    expect(stockOf(book, '5/4x6', 24)).toEqual({
      length: feet(24),
      price: 2800,
      code: '30546-24',
      date: '2026-11-20',
      supplier: 'Hill Top Lumber',
    })
  })
})
