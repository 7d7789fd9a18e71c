import { excerpt, type Fault, nearestName } from '../../job/index.ts'
import { isDate } from '../../units/index.ts'
import { productKey } from '../product-name.ts'
import { isFromYard, offerId } from '../suppliers/offers.ts'
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
  const stockAt = book.lumber.flatMap(({ stock }, i) =>
    stock.map((entry, at) => ({ entry, path: `lumber[${i}].stock[${at}]` })),
  )
  const pricedAt = [...stockAt, ...book.goods.map((entry, i) => ({ entry, path: `goods[${i}]` }))]
  const dated = pricedAt.flatMap(({ entry: { date, offers }, path }) => [
    { date, path: `${path}.date` },
    ...offers.map((offer, at) => ({ date: offer.date, path: `${path}.offers[${at}].date` })),
  ])
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
  offerChecks(book, pricedAt, faults)
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

/** Each supplier is stated once, sells a thing at one price, and only what comes on a yard's truck. */
function offerChecks(
  book: BookFile,
  pricedAt: readonly {
    readonly entry: BookFile['lumber'][number]['stock'][number] | BookFile['goods'][number]
    readonly path: string
  }[],
  faults: Fault[],
): void {
  const names = book.suppliers.map(({ name }) => name)
  once(faults, 'suppliers', names, 'state each supplier once')
  for (const { entry, path } of pricedAt) {
    const { supplier, offers } = entry
    if (offers.length > 0 && 'sku' in entry && !isFromYard(entry.sku))
      wrong(
        faults,
        `${path}.offers`,
        'are of hire, a fee or ready-mix',
        'give these one price each, without offers',
      )
    offers.forEach((offer, at) => {
      if (names.includes(offer.supplier)) return
      const near = nearestName(offer.supplier, names)
      const fix =
        near === null
          ? 'state it under "suppliers"'
          : `did you mean "${near}"? Else state it under "suppliers"`
      wrong(
        faults,
        `${path}.offers[${at}].supplier`,
        `is "${excerpt(offer.supplier)}", of whom the book states nothing`,
        fix,
      )
    })
    const sellers = [supplier ?? book.supplier, ...offers.map((offer) => offer.supplier)]
    once(faults, `${path}.offers`, sellers, 'give each supplier one price of a thing')
  }
  const ids = book.lumber.flatMap(({ stock }) => stock.flatMap(({ offers }) => offers.map(offerId)))
  once(faults, 'lumber', ids, 'give each length of each product its own code at a supplier')
}

function once(faults: Fault[], path: string, keys: readonly string[], fix: string): void {
  const seen = new Set<string>()
  const twice = new Set<string>()
  for (const key of keys) (seen.has(key) ? twice : seen).add(key)
  for (const key of twice) wrong(faults, path, `has "${key}" more than once`, fix)
}
