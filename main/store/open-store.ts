import { existsSync, mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import Sqlite, { type Database } from 'better-sqlite3'
import { fail, ok, type Result } from '../../core/units/index.ts'
import { backUp, backupFolder } from './backups.ts'
import { type Arrival, type Arrived, takeEverything } from './everything.ts'
import { APPLICATION_ID, readHeader } from './header.ts'
import { type JobRepository, jobRepository } from './jobs.ts'
import { makeStore, prepare } from './make-store.ts'
import { latestVersion, migrate, storedVersion } from './migrate.ts'
import { MIGRATIONS, type Migration } from './migrations.ts'
import { type OffcutRepository, offcutRepository } from './offcuts.ts'
import { type PriceBookRepository, priceBookRepository } from './price-book.ts'
import { type QuoteRepository, quoteRepository } from './quotes.ts'
import type { StoreRefusal } from './refusal.ts'
import { type SawDayRepository, sawDayRepository } from './saw-days.ts'
import { beginSession, endSession } from './sessions.ts'
import { type Settings, settings } from './settings.ts'

export interface StoreOptions {
  readonly file: string
  readonly now: () => Date
  readonly newId: () => string
  readonly migrations?: readonly Migration[]
}

/** The user's jobs on disk. */
export interface Store {
  readonly jobs: JobRepository
  readonly offcuts: OffcutRepository
  readonly priceBook: PriceBookRepository
  readonly quotes: QuoteRepository
  readonly sawDays: SawDayRepository
  readonly settings: Settings
  /** Jobs, offcuts, quotes and marks at the saw of a file, all or none, beside what is here. */
  takeEverything(arrival: Arrival): Arrived
  /** a copy of the program that had this store open was killed or crashed */
  readonly crashed: boolean
  /** copy made before the layout was brought up to date, or null */
  readonly backup: string | null
  /**
   * Makes the copy of the day where there is none yet, and drops the oldest; null where there was one. A disk that is
   * full or refuses is a sentence for the log, for the store itself goes on.
   */
  backUp(day: string): Result<string | null, string>
  close(): void
}

/**
 * Opens or makes a store: WAL, every commit on the disk before it is reported. A file that is not ours,
 * is damaged or comes from a newer program is refused with a sentence and left as it is.
 */
export function openStore(options: StoreOptions): Result<Store, StoreRefusal> {
  const migrations = options.migrations ?? MIGRATIONS
  const latest = latestVersion(migrations)
  const { file } = options
  try {
    mkdirSync(dirname(file), { recursive: true })
    const refusal = inspect(file, latest)
    if (refusal !== null) return fail(refusal)
  } catch (error) {
    return fail({ code: 'unreachable', message: `The store ${file} cannot be read: ${reason(error)}.` })
  }
  let db: Database | null = null
  try {
    if (!existsSync(file)) makeStore(file, migrations)
    db = new Sqlite(file, { timeout: 5000 })
    prepare(db)
    const backup = migrate(db, migrations, (version) => copyOf(db as Database, file, version))
    return ok(storeOn(db, options, backup))
  } catch (error) {
    db?.close()
    return fail(refusalOf(file, error))
  }
}

function storeOn(db: Database, options: StoreOptions, backup: string | null): Store {
  const session = options.newId()
  const { crashed } = beginSession(db, {
    id: session,
    pid: process.pid,
    openedAt: options.now().toISOString(),
  })
  const jobs = jobRepository(db)
  const offcuts = offcutRepository(db)
  const sawDays = sawDayRepository(db)
  return {
    jobs,
    offcuts,
    priceBook: priceBookRepository(db),
    quotes: quoteRepository(db),
    sawDays,
    settings: settings(db),
    crashed,
    takeEverything: takeEverything(db, { jobs, offcuts, sawDays }, options.newId),
    backup,
    backUp: (day) => {
      try {
        return ok(backUp(db, options.file, day))
      } catch (error) {
        return fail(`No backup of ${options.file} could be made: ${reason(error)}.`)
      }
    },
    close: () => {
      if (!db.open) return
      endSession(db, session)
      db.close()
    },
  }
}

/** Looks before anything is written: first at the bytes, then through a connection that may not write. */
function inspect(file: string, latest: number): StoreRefusal | null {
  const header = readHeader(file)
  if (header.kind === 'absent' || header.kind === 'empty') return null
  if (header.kind === 'other') return damaged(file)
  if (header.applicationId === APPLICATION_ID && header.userVersion > latest) {
    return newer(file, header.userVersion, latest)
  }
  const db = new Sqlite(file, { readonly: true, timeout: 5000 })
  try {
    if (isForeign(db)) {
      return {
        code: 'foreign',
        message: `${file} is a database of another program; it was left as it is. Choose another folder for the store.`,
      }
    }
    const version = storedVersion(db)
    if (version > latest) return newer(file, version, latest)
    return db.pragma('quick_check(1)', { simple: true }) === 'ok' ? null : damaged(file)
  } catch (error) {
    return refusalOf(file, error)
  } finally {
    db.close()
  }
}

function isForeign(db: Database): boolean {
  if (db.pragma('application_id', { simple: true }) === APPLICATION_ID) return false
  return db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() !== 0
}

/** VACUUM INTO writes a whole, consistent file, what is still in the WAL included. */
function copyOf(db: Database, file: string, version: number): string {
  let copy = `${file}.before-version-${version + 1}`
  for (let n = 2; existsSync(copy); n += 1) copy = `${file}.before-version-${version + 1}-${n}`
  db.prepare('VACUUM INTO ?').run(copy)
  return copy
}

function newer(file: string, version: number, latest: number): StoreRefusal {
  return {
    code: 'newer',
    message:
      `${file} was written by a newer version of this program (store version ${version}; this one knows up to ` +
      `${latest}). It was left as it is. Update the program, or choose another folder for the store.`,
  }
}

function damaged(file: string): StoreRefusal {
  return {
    code: 'corrupt',
    message:
      `${file} is damaged and was left as it is. Move it away to start with an empty store, or put a backup ` +
      `in its place: the copy of a day, in ${backupFolder(file)}, or your own.`,
  }
}

function refusalOf(file: string, error: unknown): StoreRefusal {
  const code = (error as { code?: string }).code ?? ''
  if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') return damaged(file)
  return { code: 'unreachable', message: `The store ${file} cannot be opened: ${reason(error)}.` }
}

function reason(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
