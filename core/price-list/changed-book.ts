import {
  goodOf,
  goodOffers,
  type LumberProduct,
  type PriceBook,
  productName,
  stockOf,
  stockSellers,
  withSupplier,
} from '../pricing/index.ts'
import { cents, printLength, TICKS_PER_FOOT, type Ticks, toFeet, unitPrice } from '../units/index.ts'
import type { PricedRow } from './read-row.ts'
import type { PriceChange, PriceListFault, PriceListRequest, PriceListTaken } from './types.ts'

/** The book with the prices of the rows; what is priced twice, or would get a code that another length has, is a fault. */
export function changedBook(
  book: PriceBook,
  rows: readonly PricedRow[],
  { beside }: Pick<PriceListRequest, 'beside'>,
  faults: PriceListFault[],
): Pick<PriceListTaken, 'book' | 'changes'> {
  const first = new Map<string, PricedRow>()
  const changes: PriceChange[] = []
  for (const one of rows) {
    const key = keyOf(one, book)
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
      before: priceBefore(one, book, beside),
      after: one.price,
      date: one.date,
      supplier: supplierOf(one, book),
    })
  }
  const takes = [...first.values()]
  const stated = beside ? takes.reduce((now, one) => withSupplier(now, supplierOf(one, book)), book) : book
  const lumber = book.lumber.map((product) => withStock(product, takes, book, beside))
  const codes = new Map<string, number>()
  for (const { code, supplier } of lumber.flatMap(({ stock }) =>
    stock.flatMap((entry) => stockSellers(entry, book)),
  )) {
    const key = JSON.stringify([supplier, code])
    codes.set(key, (codes.get(key) ?? 0) + 1)
  }
  for (const one of takes) {
    if (one.of.kind !== 'stock') continue
    const code = codeOf(one, one.of.product, one.of.length, book)
    if ((codes.get(JSON.stringify([supplierOf(one, book), code])) ?? 0) > 1)
      faults.push(
        faultAt(one, 'another length of the book has this code', 'give this length a code of its own'),
      )
  }
  return {
    changes,
    book: {
      ...book,
      suppliers: stated.suppliers,
      lumber,
      goods: book.goods.map((good) =>
        takes
          .filter(({ of }) => of.kind === 'good' && of.good.sku === good.sku)
          .reduce((now, one) => {
            const supplier = supplierOf(one, book)
            const pack = good.pack
            const sellers = placed(
              goodOffers(now, book),
              { pack, code: one.code, supplier, price: one.price, date: one.date },
              beside,
              (offer, before) => ({ ...before, price: offer.price, supplier, date: one.date }),
            )
            return goodOf(now, sellers, book) ?? now
          }, good),
      ),
    },
  }
}

/**
 * The sellers of a thing with a price of one of them: in the place of that one's, else beside the others, else in the
 * place of the book's own.
 */
function placed<O extends { readonly supplier: string }>(
  sellers: readonly O[],
  offer: O,
  beside: boolean,
  over: (offer: O, before: O) => O,
): readonly O[] {
  const at = sellers.findIndex(({ supplier }) => supplier === offer.supplier)
  if (at < 0 && (beside || sellers.length === 0)) return [...sellers, offer]
  const place = Math.max(0, at)
  return sellers.map((one, index) => (index === place ? over(offer, one) : one))
}

function withStock(
  product: LumberProduct,
  takes: readonly PricedRow[],
  book: PriceBook,
  beside: boolean,
): LumberProduct {
  const own = takes.filter(({ of }) => of.kind === 'stock' && of.product === product)
  if (own.length === 0) return product
  const lengths = new Map(product.stock.map((stock) => [stock.length, stock]))
  for (const one of own) {
    if (one.of.kind !== 'stock') continue
    const { length } = one.of
    const before = lengths.get(length)
    const supplier = supplierOf(one, book)
    const price = cents(one.price / 100)
    const sellers = placed(
      before === undefined ? [] : stockSellers(before, book),
      { supplier, price, code: codeOf(one, product, length, book), date: one.date },
      beside,
      (offer, earlier) => ({ ...earlier, price, supplier: offer.supplier, date: one.date }),
    )
    const entry = stockOf(length, sellers, book)
    if (entry !== null) lengths.set(length, entry)
  }
  return { ...product, stock: [...lengths.values()].toSorted((a, b) => a.length - b.length) }
}

/** The code that a length has, or else the list's, or else one made of the product's. */
function codeOf(one: PricedRow, product: LumberProduct, length: Ticks, book: PriceBook): string {
  const entry = product.stock.find((stock) => stock.length === length)
  const supplier = supplierOf(one, book)
  const sellers = entry === undefined ? [] : stockSellers(entry, book)
  const known = sellers.find((seller) => seller.supplier === supplier)?.code
  if (known !== undefined) return known
  if (one.code !== '' && one.code !== product.code) return one.code
  return (
    entry?.code ?? `${product.code}-${length % TICKS_PER_FOOT === 0 ? toFeet(length) : printLength(length)}`
  )
}

function supplierOf({ supplier }: PricedRow, book: PriceBook): string {
  return supplier === '' ? book.supplier : supplier
}

function priceBefore(one: PricedRow, book: PriceBook, beside: boolean): PriceChange['before'] {
  const supplier = supplierOf(one, book)
  const { of } = one
  const known = of.kind === 'good' ? undefined : of.product.stock.find(({ length }) => length === of.length)
  const sellers: readonly { readonly supplier: string; readonly price: number }[] =
    of.kind === 'good' ? goodOffers(of.good, book) : known === undefined ? [] : stockSellers(known, book)
  const before = sellers.find((seller) => seller.supplier === supplier) ?? (beside ? undefined : sellers[0])
  if (before === undefined) return null
  return of.kind === 'good' ? unitPrice(before.price) : unitPrice(before.price * 100)
}

function labelOf({ of }: PricedRow): string {
  return of.kind === 'good' ? of.good.label : `${productName(of.product.product)}, ${printLength(of.length)}`
}

function keyOf(one: PricedRow, book: PriceBook): string {
  const { of } = one
  const thing =
    of.kind === 'good' ? ['good', of.good.sku] : ['stock', productName(of.product.product), of.length]
  return JSON.stringify([...thing, supplierOf(one, book)])
}

function faultAt({ row }: PricedRow, message: string, fix: string): PriceListFault {
  return { row: row.number, line: row.line, column: 0, heading: '', message, fix }
}
