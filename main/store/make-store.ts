import { linkSync, rmSync } from 'node:fs'
import Sqlite, { type Database } from 'better-sqlite3'
import { APPLICATION_ID } from './header.ts'
import { migrate } from './migrate.ts'
import type { Migration } from './migrations.ts'

/**
 * Makes an empty store beside its place and puts it there whole: two copies of the program that begin at once would
 * else meet while the file changes to WAL, where SQLite refuses one of them or shows it half of the other's layout. A
 * store that is there by then is left as it is; on a disk without hard links none is put there. Throws what SQLite says.
 */
export function makeStore(file: string, migrations: readonly Migration[]): void {
  const made = `${file}.new-${process.pid}`
  try {
    const db = new Sqlite(made)
    try {
      prepare(db)
      migrate(db, migrations, () => made)
    } finally {
      db.close()
    }
    link(made, file)
  } finally {
    for (const end of ['', '-wal', '-shm', '-journal']) rmSync(`${made}${end}`, { force: true })
  }
}

function link(made: string, file: string): void {
  try {
    linkSync(made, file)
  } catch {
    // another copy was first, or the disk knows no links: the store is opened, or made in its place, next
  }
}

/** What a connection needs before rows are read: WAL, every commit on the disk before it is reported. */
export function prepare(db: Database): void {
  db.pragma('journal_mode = WAL')
  db.pragma('synchronous = FULL')
  db.pragma('foreign_keys = ON')
  if (db.pragma('user_version', { simple: true }) === 0) db.pragma(`application_id = ${APPLICATION_ID}`)
}
