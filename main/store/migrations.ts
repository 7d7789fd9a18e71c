import type { Database } from 'better-sqlite3'
import { packBook } from './pack-book.ts'

/** One step of the store's layout. */
export interface Migration {
  readonly version: number
  readonly update: (db: Database) => void
}

/**
 * In order; a number once used is never used again. `PRAGMA user_version` holds the last one applied.
 * Tables are STRICT, so that SQLite never turns a text into a number.
 */
export const MIGRATIONS: readonly Migration[] = [
  {
    version: 1,
    update: (db) => {
      db.exec(`
        CREATE TABLE jobs (
          id TEXT PRIMARY KEY,
          name TEXT NOT NULL,
          revision INTEGER NOT NULL,
          saved_at TEXT NOT NULL,
          statement TEXT NOT NULL
        ) STRICT;
        CREATE INDEX jobs_by_save ON jobs (saved_at DESC, id);
        CREATE TABLE job_versions (
          job_id TEXT NOT NULL REFERENCES jobs (id) ON DELETE CASCADE,
          revision INTEGER NOT NULL,
          label TEXT NOT NULL,
          saved_at TEXT NOT NULL,
          statement TEXT NOT NULL,
          PRIMARY KEY (job_id, revision)
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
        CREATE TABLE sessions (id TEXT PRIMARY KEY, pid INTEGER NOT NULL, opened_at TEXT NOT NULL) STRICT;
      `)
    },
  },
  {
    // one row per offcut; it stays after it was used, so that a job's offcuts are never counted twice
    version: 2,
    update: (db) => {
      db.exec(`
        CREATE TABLE offcuts (
          id TEXT PRIMARY KEY,
          size TEXT NOT NULL,
          species TEXT NOT NULL,
          grade TEXT NOT NULL,
          treatment TEXT NOT NULL,
          length INTEGER NOT NULL CHECK (length > 0),
          from_job TEXT NOT NULL,
          added_at TEXT NOT NULL,
          used_by TEXT
        ) STRICT;
        CREATE INDEX offcuts_on_hand ON offcuts (used_by, size, length DESC);
        CREATE TABLE jobs_cut (
          job_id TEXT PRIMARY KEY REFERENCES jobs (id) ON DELETE CASCADE,
          cut_at TEXT NOT NULL
        ) STRICT;
      `)
    },
  },
  {
    // at most one row: the text of the user's price book
    version: 3,
    update: (db) => {
      db.exec(`
        CREATE TABLE price_book (
          only_one INTEGER PRIMARY KEY CHECK (only_one = 1),
          text TEXT NOT NULL,
          imported_at TEXT NOT NULL
        ) STRICT;
      `)
    },
  },
  {
    // which job's plan left an offcut: that job is not offered it, for its plan would have to cut the board first
    version: 4,
    update: (db) => {
      db.exec('ALTER TABLE offcuts ADD COLUMN left_by TEXT')
    },
  },
  {
    // what undo and redo walk through; the present is the statement at step_at
    version: 5,
    update: (db) => {
      db.exec(`
        CREATE TABLE job_steps (
          job_id TEXT NOT NULL REFERENCES jobs (id) ON DELETE CASCADE,
          place INTEGER NOT NULL CHECK (place >= 0),
          label TEXT NOT NULL,
          statement TEXT NOT NULL,
          PRIMARY KEY (job_id, place)
        ) STRICT, WITHOUT ROWID;
        ALTER TABLE jobs ADD COLUMN step_at INTEGER NOT NULL DEFAULT 0;
      `)
    },
  },
  {
    // a job taken off the list is kept, so that it can be brought back
    version: 6,
    update: (db) => {
      db.exec('ALTER TABLE jobs ADD COLUMN removed_at TEXT')
    },
  },
  {
    // quotes as they were sent: the paper itself, and what it was made from
    version: 7,
    update: (db) => {
      db.exec(`
        CREATE TABLE quotes (
          job_id TEXT NOT NULL REFERENCES jobs (id) ON DELETE CASCADE,
          number INTEGER NOT NULL CHECK (number > 0),
          revision INTEGER NOT NULL CHECK (revision > 0),
          dated TEXT NOT NULL,
          sent_at TEXT NOT NULL,
          price INTEGER NOT NULL,
          made_from TEXT NOT NULL,
          pdf BLOB NOT NULL,
          PRIMARY KEY (number, revision)
        ) STRICT, WITHOUT ROWID;
        CREATE INDEX quotes_of_job ON quotes (job_id, number, revision);
      `)
    },
  },
  {
    // which boards of a job are sawn, by product, and the marks before it
    version: 8,
    update: (db) => {
      db.exec(`
        CREATE TABLE saw_days (
          job_id TEXT NOT NULL REFERENCES jobs (id) ON DELETE CASCADE,
          plan_id TEXT NOT NULL,
          text TEXT NOT NULL,
          PRIMARY KEY (job_id, plan_id)
        ) STRICT, WITHOUT ROWID;
      `)
    },
  },
  {
    // the price books that were in use before, the newest last; one without a text was the sample
    version: 9,
    update: (db) => {
      db.exec(`
        CREATE TABLE price_books_before (
          place INTEGER PRIMARY KEY,
          label TEXT NOT NULL,
          text TEXT,
          imported_at TEXT
        ) STRICT;
      `)
    },
  },
  {
    // the books that undo and redo lead to, packed: each is a whole one, and there are many; 'past' are those that were in
    // use before, the newest last, 'future' those that were taken back, the next one last
    version: 10,
    update: (db) => {
      db.exec(`
        CREATE TABLE price_book_steps (
          way TEXT NOT NULL CHECK (way IN ('past', 'future')),
          place INTEGER NOT NULL,
          label TEXT NOT NULL,
          packed BLOB,
          imported_at TEXT,
          PRIMARY KEY (way, place)
        ) STRICT;
      `)
      const add = db.prepare(
        "INSERT INTO price_book_steps (way, place, label, packed, imported_at) VALUES ('past', ?, ?, ?, ?)",
      )
      const before = db.prepare('SELECT * FROM price_books_before ORDER BY place').all() as {
        place: number
        label: string
        text: string | null
        imported_at: string | null
      }[]
      for (const { place, label, text, imported_at } of before)
        add.run(place, label, packBook(text), imported_at)
      db.exec('DROP TABLE price_books_before')
    },
  },
]
