import type { Database } from 'better-sqlite3'

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
  /** the book as it was before the last change; nothing where there is none */
  takeBack(): void
}

/** So many changes can be taken back; a book is some hundred kilobytes at most. */
const KEPT = 20

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
  const change = db.transaction((to: StoredPrices | null, label: string) => {
    const before = read()
    db.prepare('INSERT INTO price_books_before (label, text, imported_at) VALUES (?, ?, ?)').run(
      label,
      before?.text ?? null,
      before?.importedAt ?? null,
    )
    db.prepare(
      'DELETE FROM price_books_before WHERE place NOT IN (SELECT place FROM price_books_before ORDER BY place DESC LIMIT ?)',
    ).run(KEPT)
    put(to)
  })
  const takeBack = db.transaction(() => {
    const last = db
      .prepare(
        'SELECT place, text, imported_at AS importedAt FROM price_books_before ORDER BY place DESC LIMIT 1',
      )
      .get() as { place: number; text: string | null; importedAt: string | null } | undefined
    if (last === undefined) return
    db.prepare('DELETE FROM price_books_before WHERE place = ?').run(last.place)
    const { text, importedAt } = last
    put(text === null || importedAt === null ? null : { text, importedAt })
  })
  return {
    read,
    write: (prices, label) => change(prices, label),
    clear: (label) => change(null, label),
    lastChange: () =>
      (db.prepare('SELECT label FROM price_books_before ORDER BY place DESC LIMIT 1').pluck().get() as
        | string
        | undefined) ?? null,
    takeBack,
  }
}
