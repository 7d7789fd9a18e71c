import { type LumberProduct, type PriceBook, productName, type StockPrice } from '../pricing/index.ts'
import { cents, printLength, TICKS_PER_FOOT, type Ticks, toFeet, unitPrice } from '../units/index.ts'
import type { PricedRow } from './read-row.ts'
import type { PriceChange, PriceListFault, PriceListTaken } from './types.ts'

/** The book with the prices of the rows; what is priced twice, or would get a code that another length has, is a fault. */
export function changedBook(
  book: PriceBook,
  rows: readonly PricedRow[],
  faults: PriceListFault[],
): Pick<PriceListTaken, 'book' | 'changes'> {
  const first = new Map<string, PricedRow>()
  const changes: PriceChange[] = []
  for (const one of rows) {
    const key = keyOf(one)
    const earlier = first.get(key)
    if (earlier === undefined) first.set(key, one)
    else {
      faults.push(
        faultAt(one, `row ${earlier.row.number} prices ${labelOf(one)} too`, 'price each thing once'),
      )
      continue
    }
    changes.push({
      row: one.row.number,
      label: labelOf(one),
      before: priceBefore(one),
      after: one.price,
      date: one.date,
      supplier: one.supplier === '' ? book.supplier : one.supplier,
    })
  }
  const takes = [...first.values()]
  const lumber = book.lumber.map((product) => withStock(product, takes, book))
  const codes = new Map<string, number>()
  for (const { code } of lumber.flatMap(({ stock }) => stock)) codes.set(code, (codes.get(code) ?? 0) + 1)
  for (const one of takes)
    if (one.of.kind === 'stock' && (codes.get(codeOf(one, one.of.product, one.of.length)) ?? 0) > 1)
      faults.push(
        faultAt(one, 'another length of the book has this code', 'give this length a code of its own'),
      )
  return {
    changes,
    book: {
      ...book,
      lumber,
      goods: book.goods.map((good) => {
        const one = takes.find(({ of }) => of.kind === 'good' && of.good.sku === good.sku)
        return one === undefined ? good : { ...good, price: one.price, ...sourceOfRow(one, book) }
      }),
    },
  }
}

function withStock(product: LumberProduct, takes: readonly PricedRow[], book: PriceBook): LumberProduct {
  const own = takes.filter(({ of }) => of.kind === 'stock' && of.product === product)
  if (own.length === 0) return product
  const lengths = new Map(product.stock.map((stock) => [stock.length, stock]))
  for (const one of own) {
    if (one.of.kind !== 'stock') continue
    const { length } = one.of
    const before: Partial<StockPrice> = lengths.get(length) ?? {}
    lengths.set(length, {
      ...before,
      length,
      price: cents(one.price / 100),
      code: codeOf(one, product, length),
      ...sourceOfRow(one, book),
    })
  }
  return { ...product, stock: [...lengths.values()].toSorted((a, b) => a.length - b.length) }
}

/** The code that a length has, or else the list's, or else one made of the product's. */
function codeOf(one: PricedRow, product: LumberProduct, length: Ticks): string {
  const known = product.stock.find((stock) => stock.length === length)?.code
  if (known !== undefined) return known
  if (one.code !== '' && one.code !== product.code) return one.code
  return `${product.code}-${length % TICKS_PER_FOOT === 0 ? toFeet(length) : printLength(length)}`
}

function sourceOfRow({ date, supplier }: PricedRow, book: PriceBook) {
  return { date, supplier: supplier === '' ? book.supplier : supplier }
}

function priceBefore({ of }: PricedRow): PriceChange['before'] {
  if (of.kind === 'good') return of.good.price
  const known = of.product.stock.find(({ length }) => length === of.length)
  return known === undefined ? null : unitPrice(known.price * 100)
}

function labelOf({ of }: PricedRow): string {
  return of.kind === 'good' ? of.good.label : `${productName(of.product.product)}, ${printLength(of.length)}`
}

function keyOf({ of }: PricedRow): string {
  return of.kind === 'good' ? `good ${of.good.sku}` : `stock ${productName(of.product.product)} ${of.length}`
}

function faultAt({ row }: PricedRow, message: string, fix: string): PriceListFault {
  return { row: row.number, line: row.line, column: 0, heading: '', message, fix }
}
