import { describe, expect, test } from 'vitest'
import {
  type BookEdit,
  type BookRow,
  editBook,
  goodsWithoutPrice,
  type PriceBook,
  SAMPLE_BOOK,
  suppliersOf,
} from '../../../core/pricing/index.ts'
import { feet } from '../../../core/units/index.ts'
import { bookOfSeveral, HILL, YARD } from '../../fixtures/two-suppliers.ts'

const TODAY = '2026-11-25'
const PRODUCT = '2x10 SP No.2 treated'
const board = (long: number, supplier = YARD): BookRow => ({
  of: 'board',
  product: PRODUCT,
  length: feet(long),
  supplier,
})
const lengthOf = (product: string, length: string) =>
  ({ kind: 'add length', product, length, supplier: 'City Lumber', price: '1', code: '' }) as const
const hanger = (supplier = YARD): BookRow => ({ of: 'good', sku: 'joist-hanger-2x10', supplier })
const set = (row: BookRow, field: Extract<BookEdit, { kind: 'set' }>['field'], text: string): BookEdit => ({
  kind: 'set',
  row,
  field,
  text,
})
const edited = (edits: readonly BookEdit[], book: PriceBook = SAMPLE_BOOK) => {
  const made = editBook(book, edits, TODAY)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}
const faultOf = (edits: readonly BookEdit[], book: PriceBook = SAMPLE_BOOK) => {
  const made = editBook(book, edits, TODAY)
  return made.ok ? [] : made.error.map(({ edit, message, fix }) => `${edit}: ${message}; ${fix}`)
}
const stock = (book: PriceBook, long: number) =>
  book.lumber
    .find(({ product }) => product.size === '2x10')
    ?.stock.find(({ length }) => length === feet(long))
const good = (book: PriceBook) => book.goods.find(({ sku }) => sku === 'joist-hanger-2x10')
const several = bookOfSeveral({ [YARD]: [4000], [HILL]: [6000] }, [
  { supplier: HILL, goods: { 'joist-hanger-2x10': 200 }, boards: { '30210-16': 2200 } },
])

describe('a cell of the price book', () => {
  test('that is a price is of the day on which it was typed, and the change has a name', () => {
    const { book, label } = edited([set(board(16), 'price', '24.10')])
    expect(stock(book, 16)).toEqual({ length: feet(16), price: 2410, code: '30210-16', date: TODAY })
    expect(label).toBe('2x10 Southern Pine No.2, treated, 16\'-0", An invented yard: price 24.10')
    expect(good(edited([set(hanger(), 'price', '$2.455')]).book)).toMatchObject({
      price: 24_550,
      date: TODAY,
    })
  })

  test('of one supplier leaves the prices of the others', () => {
    const { book } = edited([set(board(16, HILL), 'price', '21'), set(hanger(HILL), 'pack', '25')], several)
    expect(stock(book, 16)).toMatchObject({
      price: 2349,
      offers: [{ supplier: HILL, price: 2100, date: TODAY }],
    })
    expect(good(book)).toMatchObject({ pack: 1000, offers: [{ supplier: HILL, pack: 25_000 }] })
  })

  test('holds pack, least count, supply, price breaks and day, and nothing where it is emptied', () => {
    const made = edited([
      set(board(16), 'pack', '4'),
      set(board(16), 'minimum', '8'),
      set(board(16), 'supply', '96'),
      set(board(16), 'breaks', '50: 22; 20: $23.00'),
      set(board(16), 'date', '11/3/2026'),
    ])
    expect(made.label).toBe('5 changes of the price book')
    expect(stock(made.book, 16)).toMatchObject({
      pack: 4,
      minimum: 8,
      supply: 96,
      breaks: [
        { from: 20, price: 2300 },
        { from: 50, price: 2200 },
      ],
      date: '2026-11-03',
    })
    const emptied = edited([set(board(16), 'pack', ''), set(board(16), 'breaks', '')], made.book).book
    expect(stock(emptied, 16)).not.toHaveProperty('pack')
    expect(stock(emptied, 16)).not.toHaveProperty('breaks')
    expect(stock(emptied, 16)).toMatchObject({ minimum: 8 })
  })

  test('may be an hour, a minute, the crew and the rate; a rate that was typed is one’s own', () => {
    const { book } = edited([
      set({ of: 'rate', id: 'joist' }, 'crewHours', '0,02'),
      set({ of: 'joint', kind: 'rim' }, 'minutes', '5'),
      set({ of: 'book' }, 'labourRate', '$65'),
      set({ of: 'book' }, 'crewSize', '3'),
    ])
    expect(book.rates.find(({ id }) => id === 'joist')).toMatchObject({
      crewHours: 2000,
      confidence: 'your own',
    })
    expect(book.joints.find(({ kind }) => kind === 'rim')?.minutes).toBe(5)
    expect([book.labourRate, book.crewSize]).toEqual([6500, 3])
  })

  test('that cannot be read is told with what would be right, all of them at once, and nothing is changed', () => {
    expect(
      faultOf([
        set(board(16), 'price', 'a lot'),
        set(hanger(), 'price', '3'),
        set(board(16), 'supply', '2.5'),
        set(hanger(), 'date', 'May'),
        set(board(16), 'breaks', '20 23'),
        set(board(99), 'price', '3'),
      ]),
    ).toEqual([
      expect.stringMatching(/^0: the price is "a lot".*; .+/),
      '2: the supply is 2.5; write a number from 0 to 100000, without decimals',
      '3: “May” is no day; write it as 2026-11-01 or 11/1/2026',
      expect.stringMatching(/^4: .*; write count and price, such as 18: \$15.00; 50: \$14.00$/),
      '5: this row is no longer in the price book; look at the book as it is now',
    ])
  })
})

describe('rows of the price book', () => {
  test('a supplier is added with what a delivery costs, and sells a thing beside the others', () => {
    const { book } = edited([
      { kind: 'add supplier', name: 'City Lumber', delivery: '55', freeFrom: '$1,500' },
      { kind: 'add price', row: board(16, 'City Lumber'), price: '21.50', code: 'C-16' },
      { kind: 'add price', row: hanger('City Lumber'), price: '1.99', code: '' },
    ])
    expect(book.suppliers).toEqual([
      { name: YARD, delivery: null, freeFrom: null },
      { name: 'City Lumber', delivery: 5500, freeFrom: 150_000 },
    ])
    expect(stock(book, 16)?.offers).toEqual([
      { supplier: 'City Lumber', price: 2150, code: 'C-16', date: TODAY },
    ])
    expect(good(book)?.offers).toMatchObject([{ supplier: 'City Lumber', price: 19_900 }])
  })

  test('a length is added in its place, a bare number being feet', () => {
    const { book, label } = edited([
      { kind: 'add length', product: PRODUCT, length: '26', supplier: YARD, price: '55', code: '' },
    ])
    expect(label).toBe('26 of 2x10 Southern Pine No.2, treated')
    expect(stock(book, 26)).toEqual({ length: feet(26), price: 5500, code: '30210-26', date: TODAY })
    expect(book.lumber.find(({ product }) => product.size === '2x10')?.stock.at(-1)?.length).toBe(feet(26))
  })

  test('a board that the book did not have is added with its first length, and removed with all of them', () => {
    const cedar = {
      kind: 'add product',
      size: '5/4x6',
      species: 'WC',
      grade: 'No.2',
      treatment: 'untreated',
      useClass: '',
      length: '12',
      supplier: 'City Lumber',
      price: '31.20',
      code: '',
    } as const
    const { book, label } = edited([cedar, { ...lengthOf('5/4x6 WC No.2 untreated', '16'), price: '42' }])
    expect(label).toBe('2 changes of the price book')
    expect(edited([cedar]).label).toBe('New board: 5/4x6 WC No.2, untreated')
    expect(book.lumber.at(-1)).toMatchObject({
      product: { size: '5/4x6', species: 'WC', grade: 'No.2', treatment: 'untreated' },
      stock: [
        { length: feet(12), price: 3120, code: '5/4x6-WC-No.2-untreated-12', date: TODAY },
        { length: feet(16), price: 4200, supplier: 'City Lumber' },
      ],
    })
    expect(faultOf([cedar, cedar])[0]).toBe(
      '1: 5/4x6 western cedar No.2, untreated is there already; add a length to it',
    )
    expect(faultOf([{ ...cedar, species: 'balsa' }])[0]).toMatch(/^0: no deck is framed or laid with such/)
    const removed = edited(
      [{ kind: 'remove', row: { of: 'product', product: '5/4x6 WC No.2 untreated' } }],
      book,
    )
    expect(removed.label).toBe('Remove 5/4x6 western cedar No.2, untreated')
    expect(removed.book.lumber).toEqual(SAMPLE_BOOK.lumber)
  })

  test('a good that a book has no price of is added, and one that has a price or that no job needs is not', () => {
    const bare = { ...SAMPLE_BOOK, goods: SAMPLE_BOOK.goods.filter(({ sku }) => sku !== 'joist-hanger-2x10') }
    const hangers = {
      kind: 'add good',
      sku: 'joist-hanger-2x10',
      supplier: YARD,
      price: '2.39',
      code: 'H10',
    } as const
    expect(goodsWithoutPrice(bare).map(({ sku }) => sku)).toEqual(['joist-hanger-2x10'])
    const { book, label } = edited([hangers], bare)
    expect(label).toBe('Price of Joist hanger for a 2x10, galvanised, An invented yard')
    expect(good(book)).toMatchObject({ price: 23_900, code: 'H10', date: TODAY })
    expect(goodsWithoutPrice(book)).toEqual([])
    expect(faultOf([hangers])[0]).toMatch(/^0: this good has a price already/)
    expect(faultOf([{ ...hangers, sku: 'anvil' }], bare)[0]).toMatch(/no job needs it/)
  })

  test('a price is removed, the next supplier’s is then the book’s own, and the last one takes the length with it', () => {
    const first = edited([{ kind: 'remove', row: board(16) }], several).book
    expect(stock(first, 16)).toEqual({ length: feet(16), price: 2200, code: '30210-16', supplier: HILL })
    expect(stock(edited([{ kind: 'remove', row: board(16, HILL) }], first).book, 16)).toBeUndefined()
  })

  test('a supplier is removed with all prices, and renamed wherever the name stands', () => {
    const { book } = edited([{ kind: 'remove', row: { of: 'supplier', name: HILL } }], several)
    expect(suppliersOf(book)).toEqual([YARD])
    expect(stock(book, 16)).toEqual(stock(SAMPLE_BOOK, 16))
    const renamed = edited([set({ of: 'supplier', name: HILL }, 'name', 'Hill & Dale')], several).book
    expect(suppliersOf(renamed)).toEqual([YARD, 'Hill & Dale'])
    expect(stock(renamed, 16)?.offers?.[0]?.supplier).toBe('Hill & Dale')
    const own = edited([set({ of: 'supplier', name: YARD }, 'name', 'My yard')], several).book
    expect(own.supplier).toBe('My yard')
    expect(stock(own, 16)?.price).toBe(2349)
  })

  test('what would leave a job without a price, or is there twice, is refused', () => {
    const twice = { kind: 'add price', row: board(16, HILL), price: '3', code: '' } as const
    expect(faultOf([twice], several)).toEqual([
      '0: “Hill Top Lumber” has a price for this already; change that one',
    ])
    expect(faultOf([{ kind: 'remove', row: hanger() }])[0]).toMatch(
      /^0: this is the only price of Joist hanger/,
    )
    expect(faultOf([{ kind: 'remove', row: { of: 'supplier', name: YARD } }], several)[0]).toMatch(
      /the book’s own supplier/,
    )
    expect(faultOf([{ kind: 'add supplier', name: HILL, delivery: '', freeFrom: '' }], several)[0]).toMatch(
      /there is a supplier “Hill Top Lumber” already/,
    )
    expect(
      faultOf([
        { kind: 'add length', product: PRODUCT, length: '16', supplier: YARD, price: '5', code: '' },
      ])[0],
    ).toMatch(/16'-0" is there already/)
    // a code that another length of the supplier has
    expect(faultOf([set(board(16), 'code', '30210-14')])[0]).toMatch(/"30210-14" more than once/)
  })
})
