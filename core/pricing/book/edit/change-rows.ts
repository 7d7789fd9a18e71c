import { fail, ok, parseLength, printLength, type Result } from '../../../units/index.ts'
import { productKey } from '../../product-name.ts'
import { goodOffers, isFromYard, suppliersOf } from '../../suppliers/offers.ts'
import type { PriceBook } from '../../types.ts'
import { readBoardPrice, readCode, readGoodPrice, readMoneyOrNone, readName } from './read-cell.ts'
import { goodOf, stockOf, stockSellers } from './sellers-of.ts'
import { findStock, withGood, withStock } from './set-cell.ts'
import { withSupplier } from './stated-supplier.ts'
import type { BookEdit, BookRow, Refusal } from './types.ts'

/** A thing at a supplier who did not sell it so far, of the day on which it is typed. */
export function addPrice(
  book: PriceBook,
  { row, price, code }: Extract<BookEdit, { kind: 'add price' }>,
  today: string,
): Result<PriceBook, Refusal> {
  if (row.of !== 'board' && row.of !== 'good')
    return fail({
      message: 'only boards and goods have prices of several suppliers',
      fix: 'choose one of these',
    })
  const stated = withSupplier(book, row.supplier)
  if (row.of === 'board') {
    const entry = findStock(book, row)
    if (entry === undefined)
      return fail({ message: 'this length is not in the price book', fix: 'add the length first' })
    const sellers = stockSellers(entry, book)
    if (sellers.some(({ supplier }) => supplier === row.supplier)) return sold(row.supplier)
    const each = readBoardPrice(price)
    const own = readCode(code)
    if (!each.ok) return each
    if (!own.ok) return own
    const offer = {
      supplier: row.supplier,
      price: each.value,
      code: own.value === '' ? entry.code : own.value,
      date: today,
    }
    return ok(withStock(stated, row, stockOf(entry.length, [...sellers, offer], book)))
  }
  const good = book.goods.find(({ sku }) => sku === row.sku)
  if (good === undefined)
    return fail({ message: 'this is not in the price book', fix: 'choose another good' })
  if (!isFromYard(row.sku))
    return fail({
      message: 'hire, fees and ready-mix have one price each',
      fix: 'change the price that is there',
    })
  const sellers = goodOffers(good, book)
  if (sellers.some(({ supplier }) => supplier === row.supplier)) return sold(row.supplier)
  const each = readGoodPrice(price)
  const own = readCode(code)
  if (!each.ok) return each
  if (!own.ok) return own
  const offer = { supplier: row.supplier, price: each.value, pack: good.pack, code: own.value, date: today }
  return ok(withGood(stated, goodOf(good, [...sellers, offer], book) ?? good))
}

function sold(supplier: string): Result<never, Refusal> {
  return fail({ message: `“${supplier}” has a price for this already`, fix: 'change that one' })
}

export function addLength(
  book: PriceBook,
  edit: Extract<BookEdit, { kind: 'add length' }>,
  today: string,
): Result<PriceBook, Refusal> {
  const product = book.lumber.find((entry) => productKey(entry.product) === edit.product)
  if (product === undefined)
    return fail({ message: 'this product is not in the price book', fix: 'choose another one' })
  // a bare number is feet, as a yard calls its lengths
  const typed = edit.length.trim()
  const read = parseLength(/^\d{1,2}$/.test(typed) ? `${typed} ft` : typed)
  if (!read.ok) return fail({ message: `the length: ${read.error.message}`, fix: read.error.fix })
  const length = read.value
  if (product.stock.some((entry) => entry.length === length))
    return fail({
      message: `${printLength(length)} is there already`,
      fix: 'add a price to it, or change the one it has',
    })
  const price = readBoardPrice(edit.price)
  const code = readCode(edit.code)
  if (!price.ok) return price
  if (!code.ok) return code
  const own =
    code.value === ''
      ? `${product.code}-${length % 384 === 0 ? length / 384 : printLength(length)}`
      : code.value
  const offer = { supplier: edit.supplier, price: price.value, code: own, date: today }
  const stated = edit.supplier === book.supplier ? book : withSupplier(book, edit.supplier)
  return ok(withStock(stated, { product: edit.product, length }, stockOf(length, [offer], book)))
}

export function addSupplier(
  book: PriceBook,
  { name, delivery, freeFrom }: Extract<BookEdit, { kind: 'add supplier' }>,
): Result<PriceBook, Refusal> {
  const own = readName(name, 'the name')
  if (!own.ok) return own
  if (book.suppliers.some((one) => one.name === own.value))
    return fail({ message: `there is a supplier “${own.value}” already`, fix: 'give another name' })
  const fee = readMoneyOrNone(delivery, 'the delivery', 0)
  const from = readMoneyOrNone(freeFrom, 'the sum', 1)
  if (!fee.ok) return fee
  if (!from.ok) return from
  const { suppliers } = withSupplier(book, own.value)
  return ok({
    ...book,
    suppliers: suppliers.map((one) =>
      one.name === own.value ? { name: own.value, delivery: fee.value, freeFrom: from.value } : one,
    ),
  })
}

export function removeRow(book: PriceBook, row: BookRow): Result<PriceBook, Refusal> {
  if (row.of === 'supplier') return removeSupplier(book, row.name)
  if (row.of === 'product')
    return ok({ ...book, lumber: book.lumber.filter(({ product }) => productKey(product) !== row.product) })
  if (row.of === 'board') {
    const entry = findStock(book, row)
    if (entry === undefined) return ok(book)
    const left = stockSellers(entry, book).filter(({ supplier }) => supplier !== row.supplier)
    return ok(withStock(book, row, stockOf(entry.length, left, book)))
  }
  if (row.of !== 'good')
    return fail({
      message: 'a rate or a joint cannot be removed: jobs are priced by it',
      fix: 'change its figures',
    })
  const good = book.goods.find(({ sku }) => sku === row.sku)
  if (good === undefined) return ok(book)
  const left = goodOf(
    good,
    goodOffers(good, book).filter(({ supplier }) => supplier !== row.supplier),
    book,
  )
  return left === null ? lastPrice(good.label) : ok(withGood(book, left))
}

function lastPrice(label: string): Result<never, Refusal> {
  return fail({
    message: `this is the only price of ${label}, and a job that needs it would have no price`,
    fix: 'add another supplier’s price first, or change this one',
  })
}

function removeSupplier(book: PriceBook, name: string): Result<PriceBook, Refusal> {
  if (!suppliersOf(book).includes(name)) return ok(book)
  if (name === book.supplier)
    return fail({
      message: `“${name}” is the book’s own supplier`,
      fix: 'give it another name, or take another price book',
    })
  const others = <O extends { readonly supplier: string }>(offers: readonly O[]) =>
    offers.filter(({ supplier }) => supplier !== name)
  const goods = book.goods.map((good) => ({ good, left: goodOf(good, others(goodOffers(good, book)), book) }))
  const only = goods.find(({ left }) => left === null)
  if (only !== undefined) return lastPrice(only.good.label)
  return ok({
    ...book,
    suppliers: book.suppliers.filter((one) => one.name !== name),
    lumber: book.lumber.map((product) => ({
      ...product,
      stock: product.stock.flatMap(
        (entry) => stockOf(entry.length, others(stockSellers(entry, book)), book) ?? [],
      ),
    })),
    goods: goods.flatMap(({ left }) => left ?? []),
  })
}
