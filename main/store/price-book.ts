import type { Database } from 'better-sqlite3'
import { packBook, unpackBook } from './pack-book.ts'

/** The user's own price book: the text of the file, so that what stands in it as a comment comes back too. */
interface StoredPrices {
  readonly text: string
  /** ISO time */
  readonly importedAt: string
}

export interface PriceBookRepository {
  /** null: none was given */
  read(): StoredPrices | null
  /** puts another book in the place of the present one, which can be taken back under the label of this change */
  write(prices: StoredPrices, label: string): void
  /** back to none; that can be taken back too */
  clear(label: string): void
  /** label of the last change that can be taken back; null: none */
  lastChange(): string | null
  /** label of the change that was taken back last and can be made again; null: none */
  nextChange(): string | null
  /** the book as it was before the last change; nothing where there is none */
  takeBack(): void
  /** the change that was taken back last, made again; nothing where there is none */
  makeAgain(): void
}

/** So many changes can be taken back; packed, a book is some ten kilobytes. */
const KEPT = 500

type Way = 'past' | 'future'

interface Step {
  readonly place: number
  readonly label: string
  readonly packed: Uint8Array | null
  readonly importedAt: string | null
}

export function priceBookRepository(db: Database): PriceBookRepository {
  const read = (): StoredPrices | null =>
    (db.prepare('SELECT text, imported_at AS importedAt FROM price_book').get() as
      | StoredPrices
      | undefined) ?? null
  const put = (prices: StoredPrices | null): void => {
    db.prepare('DELETE FROM price_book').run()
    if (prices !== null)
      db.prepare('INSERT INTO price_book (only_one, text, imported_at) VALUES (1, ?, ?)').run(
        prices.text,
        prices.importedAt,
      )
  }
  const last = (way: Way): Step | undefined =>
    db
      .prepare(
        'SELECT place, label, packed, imported_at AS importedAt FROM price_book_steps WHERE way = ? ORDER BY place DESC LIMIT 1',
      )
      .get(way) as Step | undefined
  const push = (way: Way, label: string, book: StoredPrices | null): void => {
    db.prepare(
      'INSERT INTO price_book_steps (way, place, label, packed, imported_at) VALUES (?, ?, ?, ?, ?)',
    ).run(way, (last(way)?.place ?? 0) + 1, label, packBook(book?.text ?? null), book?.importedAt ?? null)
    db.prepare(
      'DELETE FROM price_book_steps WHERE way = ? AND place NOT IN (SELECT place FROM price_book_steps WHERE way = ? ORDER BY place DESC LIMIT ?)',
    ).run(way, way, KEPT)
  }
  const change = db.transaction((to: StoredPrices | null, label: string) => {
    push('past', label, read())
    db.prepare("DELETE FROM price_book_steps WHERE way = 'future'").run()
    put(to)
  })
  const step = db.transaction((from: Way, to: Way) => {
    const next = last(from)
    if (next === undefined) return
    db.prepare('DELETE FROM price_book_steps WHERE way = ? AND place = ?').run(from, next.place)
    push(to, next.label, read())
    const text = unpackBook(next.packed)
    put(text === null || next.importedAt === null ? null : { text, importedAt: next.importedAt })
  })
  return {
    read,
    write: (prices, label) => change(prices, label),
    clear: (label) => change(null, label),
    lastChange: () => last('past')?.label ?? null,
    nextChange: () => last('future')?.label ?? null,
    takeBack: () => step('past', 'future'),
    makeAgain: () => step('future', 'past'),
  }
}
