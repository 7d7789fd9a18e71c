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
  write(prices: StoredPrices): void
  /** back to none */
  clear(): void
}

export function priceBookRepository(db: Database): PriceBookRepository {
  return {
    read: () =>
      (db.prepare('SELECT text, imported_at AS importedAt FROM price_book').get() as
        | StoredPrices
        | undefined) ?? null,
    write: ({ text, importedAt }) => {
      db.prepare(
        'INSERT INTO price_book (only_one, text, imported_at) VALUES (1, ?, ?) ON CONFLICT (only_one) DO UPDATE SET text = excluded.text, imported_at = excluded.imported_at',
      ).run(text, importedAt)
    },
    clear: () => {
      db.prepare('DELETE FROM price_book').run()
    },
  }
}
