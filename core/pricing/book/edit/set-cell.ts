import { fail, ok, type Result } from '../../../units/index.ts'
import { productKey } from '../../product-name.ts'
import { goodOffers } from '../../suppliers/offers.ts'
import type { GoodOffer, GoodPrice, PriceBook, StockOffer, StockPrice } from '../../types.ts'
import {
  readBoardPrice,
  readBreaks,
  readCode,
  readDay,
  readGoodPrice,
  readMoney,
  readMoneyOrNone,
  readName,
  readNumber,
  readNumberOrNone,
} from './read-cell.ts'
import { renamed } from './rename-supplier.ts'
import { goodOf, stockOf, stockSellers } from './sellers-of.ts'
import { withSupplier } from './stated-supplier.ts'
import type { BookField, BookRow, Refusal } from './types.ts'

const GONE: Refusal = {
  message: 'this row is no longer in the price book',
  fix: 'look at the book as it is now',
}
const NOT_HERE: Refusal = { message: 'this cannot be changed here', fix: 'choose another cell' }

/** The book with one cell written over. A price that is typed is of the day on which it is typed. */
export function setCell(
  book: PriceBook,
  row: BookRow,
  field: BookField,
  typed: string,
  today: string,
): Result<PriceBook, Refusal> {
  switch (row.of) {
    case 'board':
      return changeBoard(book, row, (offer) => boardCell(offer, field, typed, today))
    case 'good':
      return changeGood(book, row, (offer) => goodCell(offer, field, typed, today))
    case 'rate':
      return changeOne(
        book,
        'rates',
        ({ id }) => id === row.id,
        (rate) => {
          if (field === 'crewHours')
            return map(readNumber(typed, 'the hours', 5, 0, 1000), (crewHours) => ({
              ...rate,
              crewHours,
              confidence: 'your own',
            }))
          return field === 'workers'
            ? map(readNumber(typed, 'the workers', 0, 1, 50), (workers) => ({ ...rate, workers }))
            : fail(NOT_HERE)
        },
      )
    case 'joint':
      return changeOne(
        book,
        'joints',
        ({ kind }) => kind === row.kind,
        (joint) => {
          if (field === 'material')
            return map(readMoney(typed, 'the material'), (material) => ({ ...joint, material }))
          return field === 'minutes'
            ? map(readNumber(typed, 'the minutes', 0, 0, 600), (minutes) => ({ ...joint, minutes }))
            : fail(NOT_HERE)
        },
      )
    case 'supplier':
      if (field === 'name') {
        const name = readName(typed, 'the name')
        return name.ok ? renamed(book, row.name, name.value) : name
      }
      return changeOne(
        withSupplier(book, row.name),
        'suppliers',
        ({ name }) => name === row.name,
        (supplier) => {
          if (field === 'delivery')
            return map(readMoneyOrNone(typed, 'the delivery', 0), (delivery) => ({ ...supplier, delivery }))
          return field === 'freeFrom'
            ? map(readMoneyOrNone(typed, 'the sum', 1), (freeFrom) => ({ ...supplier, freeFrom }))
            : fail(NOT_HERE)
        },
      )
    case 'product':
      return fail(NOT_HERE)
    case 'book':
      if (field === 'labourRate')
        return map(readMoney(typed, 'the rate'), (labourRate) => ({ ...book, labourRate }))
      if (field === 'crewSize')
        return map(readNumber(typed, 'the crew', 0, 1, 50), (crewSize) => ({ ...book, crewSize }))
      if (field === 'date') return map(readDay(typed), (date) => ({ ...book, date }))
      return field === 'name'
        ? map(readName(typed, 'the name'), (name) => ({ ...book, name }))
        : fail(NOT_HERE)
  }
}

function boardCell(
  offer: StockOffer,
  field: BookField,
  typed: string,
  today: string,
): Result<StockOffer, Refusal> {
  const { pack: _pack, minimum: _minimum, supply: _supply, breaks: _breaks, ...rest } = offer
  const { pack, minimum, supply, breaks } = offer
  const limits = {
    ...(pack === undefined ? {} : { pack }),
    ...(minimum === undefined ? {} : { minimum }),
    ...(supply === undefined ? {} : { supply }),
    ...(breaks === undefined ? {} : { breaks }),
  }
  const limited = (key: 'pack' | 'minimum' | 'supply', value: number | null): StockOffer => {
    const { [key]: _old, ...others } = limits
    return { ...rest, ...others, ...(value === null ? {} : { [key]: value }) }
  }
  switch (field) {
    case 'price':
      return map(readBoardPrice(typed), (price) => ({ ...offer, price, date: today }))
    case 'code':
      return map(readName(typed, 'the code'), (code) => ({ ...offer, code }))
    case 'date':
      return map(readDay(typed), (date) => ({ ...offer, date }))
    case 'pack':
      return map(readNumberOrNone(typed, 'the pack', 1, 100_000), (n) => limited('pack', n))
    case 'minimum':
      return map(readNumberOrNone(typed, 'the least count', 1, 100_000), (n) => limited('minimum', n))
    case 'supply':
      return map(readNumberOrNone(typed, 'the supply', 0, 100_000), (n) => limited('supply', n))
    case 'breaks':
      return map(readBreaks(typed), (steps) => {
        const { breaks: _old, ...others } = limits
        return { ...rest, ...others, ...(steps.length === 0 ? {} : { breaks: steps }) }
      })
    default:
      return fail(NOT_HERE)
  }
}

function goodCell(
  offer: GoodOffer,
  field: BookField,
  typed: string,
  today: string,
): Result<GoodOffer, Refusal> {
  switch (field) {
    case 'price':
      return map(readGoodPrice(typed), (price) => ({ ...offer, price, date: today }))
    case 'code':
      return map(readCode(typed), (code) => ({ ...offer, code }))
    case 'date':
      return map(readDay(typed), (date) => ({ ...offer, date }))
    case 'pack':
      return map(readNumber(typed, 'the pack', 3, 0.001, 100_000), (pack) => ({ ...offer, pack }))
    default:
      return fail(NOT_HERE)
  }
}

export function findStock(
  book: PriceBook,
  row: { readonly product: string; readonly length: number },
): StockPrice | undefined {
  return book.lumber
    .find(({ product }) => productKey(product) === row.product)
    ?.stock.find(({ length }) => length === row.length)
}

function changeBoard(
  book: PriceBook,
  row: Extract<BookRow, { of: 'board' }>,
  change: (offer: StockOffer) => Result<StockOffer, Refusal>,
): Result<PriceBook, Refusal> {
  const entry = findStock(book, row)
  const sellers = entry === undefined ? [] : stockSellers(entry, book)
  const found = sellers.find(({ supplier }) => supplier === row.supplier)
  if (entry === undefined || found === undefined) return fail(GONE)
  return map(change(found), (changed) =>
    withStock(
      book,
      row,
      stockOf(
        entry.length,
        sellers.map((one) => (one === found ? changed : one)),
        book,
      ),
    ),
  )
}

/** The book with one length as it is given; without it where it is null. */
export function withStock(
  book: PriceBook,
  row: { readonly product: string; readonly length: number },
  entry: StockPrice | null,
): PriceBook {
  return {
    ...book,
    lumber: book.lumber.map((product) =>
      productKey(product.product) !== row.product
        ? product
        : {
            ...product,
            stock: [
              ...product.stock.filter(({ length }) => length !== row.length),
              ...(entry === null ? [] : [entry]),
            ].toSorted((a, b) => a.length - b.length),
          },
    ),
  }
}

function changeGood(
  book: PriceBook,
  row: Extract<BookRow, { of: 'good' }>,
  change: (offer: GoodOffer) => Result<GoodOffer, Refusal>,
): Result<PriceBook, Refusal> {
  const good = book.goods.find(({ sku }) => sku === row.sku)
  const sellers = good === undefined ? [] : goodOffers(good, book)
  const found = sellers.find(({ supplier }) => supplier === row.supplier)
  if (good === undefined || found === undefined) return fail(GONE)
  return map(change(found), (changed) =>
    withGood(
      book,
      goodOf(
        good,
        sellers.map((one) => (one === found ? changed : one)),
        book,
      ) ?? good,
    ),
  )
}

export function withGood(book: PriceBook, good: GoodPrice): PriceBook {
  return { ...book, goods: book.goods.map((one) => (one.sku === good.sku ? good : one)) }
}

type Lists = Pick<PriceBook, 'rates' | 'joints' | 'suppliers'>

function changeOne<K extends keyof Lists>(
  book: PriceBook,
  key: K,
  is: (one: Lists[K][number]) => boolean,
  change: (one: Lists[K][number]) => Result<Lists[K][number], Refusal>,
): Result<PriceBook, Refusal> {
  const list: readonly Lists[K][number][] = book[key]
  const found = list.find(is)
  if (found === undefined) return fail(GONE)
  return map(change(found), (changed) => ({
    ...book,
    [key]: list.map((one) => (one === found ? changed : one)),
  }))
}

function map<T, U>(result: Result<T, Refusal>, to: (value: T) => U): Result<U, Refusal> {
  return result.ok ? ok(to(result.value)) : result
}
