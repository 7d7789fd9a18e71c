import {
  bookAge,
  OLD_AFTER_DAYS,
  type PriceBook,
  SAMPLE_BOOK,
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
  readonly useSample: () => PricesInUse
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
    const age = bookAge(held.book.date, now().toISOString().slice(0, 10))
    return { book: held.book, importedAt: held.importedAt, age, isOld: age > OLD_AFTER_DAYS }
  }
  const change = (to: Held): PricesInUse => {
    held = to
    emit('prices.changed', { name: to.book.name, date: to.book.date })
    return inUse()
  }
  return {
    book: () => held.book,
    inUse,
    take: ({ text }) => {
      const read = readPriceText(text)
      if (!read.ok) return { ok: false, faults: read.error }
      const importedAt = now().toISOString()
      store.priceBook.write({ text, importedAt })
      return { ok: true, prices: change({ book: read.value, importedAt, text }) }
    },
    useSample: () => {
      store.priceBook.clear()
      return change(SAMPLE)
    },
    file: () => ({
      fileName: `prices ${held.book.date}.json`,
      text: held.text ?? `${JSON.stringify(writePriceBook(held.book), null, 2)}\n`,
    }),
  }
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
