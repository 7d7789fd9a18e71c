import { takePriceList } from '../../core/price-list/index.ts'
import {
  bookAge,
  editBook,
  OLD_AFTER_DAYS,
  type PriceBook,
  SAMPLE_BOOK,
  stalePrices,
  writePriceBook,
} from '../../core/pricing/index.ts'
import type { Methods, PricesInUse } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'
import { readPriceText } from './price-file.ts'
import { type Emit, ServiceError } from './service-types.ts'

/** The prices that every estimate of this program uses: the user's own, or the sample. */
export interface Prices {
  readonly book: () => PriceBook
  readonly inUse: () => PricesInUse
  /** All of it or nothing: a faulty file changes nothing. */
  readonly take: (input: Methods['prices.import'][0]) => Methods['prices.import'][1]
  /** What a list of prices would change; nothing is changed. */
  readonly readList: (input: Methods['prices.readList'][0]) => Methods['prices.readList'][1]
  /** All of a list or nothing. */
  readonly takeList: (input: Methods['prices.takeList'][0]) => Methods['prices.takeList'][1]
  /** another book in place of the present one, as a change of that name, which can be taken back */
  readonly put: (book: PriceBook, label: string) => PricesInUse
  readonly useSample: () => PricesInUse
  /** The prices as they were before the last change of them. */
  readonly takeBack: () => PricesInUse
  /** The change that was taken back last, made again. */
  readonly makeAgain: () => PricesInUse
  /** Single cells and rows written over: all of the edits or none. */
  readonly edit: (input: Methods['prices.edit'][0]) => Methods['prices.edit'][1]
  readonly file: () => Methods['prices.export'][1]
}

interface Held {
  readonly book: PriceBook
  readonly importedAt: string | null
  readonly text: string | null
}

const SAMPLE: Held = { book: SAMPLE_BOOK, importedAt: null, text: null }

export function priceService(store: Store, now: () => Date, emit: Emit): Prices {
  let held = heldIn(store)
  const inUse = (): PricesInUse => {
    const today = now().toISOString().slice(0, 10)
    const age = bookAge(held.book.date, today)
    return {
      book: held.book,
      importedAt: held.importedAt,
      age,
      isOld: age > OLD_AFTER_DAYS,
      stale: stalePrices(held.book, today),
      lastChange: store.priceBook.lastChange(),
      nextChange: store.priceBook.nextChange(),
    }
  }
  const change = (to: Held): PricesInUse => {
    held = to
    emit('prices.changed', { name: to.book.name, date: to.book.date })
    return inUse()
  }
  const put = (book: PriceBook, label: string): PricesInUse => {
    const text = bookText(book)
    const importedAt = now().toISOString()
    store.priceBook.write({ text, importedAt }, label)
    return change({ book, importedAt, text })
  }
  return {
    book: () => held.book,
    inUse,
    take: ({ text }) => {
      const read = readPriceText(text)
      if (!read.ok) return { ok: false, faults: read.error }
      const importedAt = now().toISOString()
      store.priceBook.write({ text, importedAt }, `Price book ${read.value.name}`)
      return { ok: true, prices: change({ book: read.value, importedAt, text }) }
    },
    readList: (request) => {
      const taken = takePriceList(held.book, request)
      if (!taken.ok) return { ok: false, faults: taken.error }
      const { book: _book, ...told } = taken.value
      return { ok: true, ...told }
    },
    takeList: (request) => {
      const taken = takePriceList(held.book, request)
      if (!taken.ok) return { ok: false, faults: taken.error }
      const { book, changes } = taken.value
      const from = request.supplier.trim() === '' ? '' : ` from ${request.supplier.trim()}`
      return {
        ok: true,
        prices: put(book, `${changes.length} prices${from}`),
        changed: changes.length,
      }
    },
    put,
    useSample: () => {
      if (held.text !== null) store.priceBook.clear('Sample prices')
      return change(SAMPLE)
    },
    takeBack: () => {
      store.priceBook.takeBack()
      return change(heldIn(store))
    },
    makeAgain: () => {
      store.priceBook.makeAgain()
      return change(heldIn(store))
    },
    edit: ({ edits }) => {
      const edited = editBook(held.book, edits, now().toISOString().slice(0, 10))
      if (!edited.ok) return { ok: false, faults: edited.error }
      return { ok: true, prices: put(edited.value.book, edited.value.label), label: edited.value.label }
    },
    file: () => ({
      fileName: `prices ${held.book.date}.json`,
      text: held.text ?? bookText(held.book),
    }),
  }
}

function bookText(book: PriceBook): string {
  return `${JSON.stringify(writePriceBook(book), null, 2)}\n`
}

/** A stored book was read once; one that this program no longer reads is not passed over in silence. */
function heldIn(store: Store): Held {
  const stored = store.priceBook.read()
  if (stored === null) return SAMPLE
  const read = readPriceText(stored.text)
  if (read.ok) return { book: read.value, ...stored }
  const [first] = read.error
  throw new ServiceError(
    'store-unusable',
    `The price book in the store cannot be read: ${first?.path ?? ''} ${first?.message ?? ''}. Use the program that took it, or put a backup of the store in its place.`,
  )
}
