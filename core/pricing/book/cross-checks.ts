import type { Fault } from '../../job/index.ts'
import { isDate } from '../../units/index.ts'
import { productKey } from '../product-name.ts'
import { BOOK_VERSION, type BookFile } from './file-form.ts'
import { wrong } from './readers.ts'

/** What the entries of a book must keep together: one price for one thing, and a real date. */
export function crossChecks(book: BookFile, faults: Fault[]): void {
  if (book.version !== BOOK_VERSION) {
    wrong(
      faults,
      'version',
      `is ${book.version}, and this program reads ${BOOK_VERSION}`,
      'use a newer program, or a price book of this version',
    )
  }
  if (!isDate(book.date)) {
    wrong(faults, 'date', 'is not a date', 'write the day the prices were given, such as "2026-11-01"')
  }
  const dated = [
    ...book.lumber.flatMap(({ stock }, i) =>
      stock.map(({ date }, at) => ({ date, path: `lumber[${i}].stock[${at}].date` })),
    ),
    ...book.goods.map(({ date }, i) => ({ date, path: `goods[${i}].date` })),
  ]
  for (const { date, path } of dated)
    if (date !== null && !isDate(date))
      wrong(faults, path, 'is not a date', 'write the day the price was given, such as "2026-11-01"')
  once(faults, 'lumber', book.lumber.map(productKey), 'list each product once, with all its lengths')
  book.lumber.forEach((entry, i) => {
    once(
      faults,
      `lumber[${i}].stock`,
      entry.stock.map((stock) => `${stock.length / 384} ft`),
      'give each length once',
    )
  })
  const codes = book.lumber.flatMap((entry) => entry.stock.map((stock) => stock.code))
  once(faults, 'lumber', codes, 'give each length of each product its own code')
  once(
    faults,
    'goods',
    book.goods.map((good) => good.sku),
    'price each sku once',
  )
  once(
    faults,
    'rates',
    book.rates.map((rate) => rate.id),
    'give each rate once',
  )
  once(
    faults,
    'joints',
    book.joints.map((joint) => joint.kind),
    'give each kind of joint once',
  )
}

function once(faults: Fault[], path: string, keys: readonly string[], fix: string): void {
  const seen = new Set<string>()
  const twice = new Set<string>()
  for (const key of keys) (seen.has(key) ? twice : seen).add(key)
  for (const key of twice) wrong(faults, path, `has "${key}" more than once`, fix)
}
