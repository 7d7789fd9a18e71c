import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { MIGRATIONS } from '../../../main/store/migrations.ts'
import { FIRST, mustOpen, mustRefuse, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const at = (name: string) => join(folder, name)

function readThenWrite(file: string, statement: string): void {
  const db = new Sqlite(file)
  db.exec(statement)
  db.close()
}

describe('opening a store', () => {
  test('makes the folder and the file, in WAL mode with every commit on the disk', () => {
    const file = at('deep/down/jobs.db')
    mustOpen(file).close()
    const db = new Sqlite(file)
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal')
    const tables = db.pragma('table_list') as { name: string; strict: number; schema: string }[]
    const ours = tables.filter((table) => table.schema === 'main' && !table.name.startsWith('sqlite_'))
    expect(ours.map((table) => table.name).sort()).toEqual([
      'job_steps',
      'job_versions',
      'jobs',
      'jobs_cut',
      'offcuts',
      'price_book',
      'price_book_steps',
      'quotes',
      'saw_days',
      'sessions',
      'settings',
    ])
    expect(ours.every((table) => table.strict === 1)).toBe(true)
    db.close()
  })

  test('takes an empty file for a new store', () => {
    writeFileSync(at('empty.db'), '')
    const store = mustOpen(at('empty.db'))
    expect(store.jobs.list()).toEqual([])
    store.close()
  })

  test('refuses a store of a newer program and leaves every byte of it', () => {
    const file = at('newer.db')
    mustOpen(file).close()
    readThenWrite(file, 'PRAGMA user_version = 99')
    const before = readFileSync(file)
    const refusal = mustRefuse(file)
    expect(refusal.code).toBe('newer')
    expect(refusal.message).toContain(
      `newer version of this program (store version 99; this one knows up to ${MIGRATIONS.length})`,
    )
    expect(readFileSync(file).equals(before)).toBe(true)
  })

  test('refuses a newer version that is still only in the write-ahead log', () => {
    const file = at('newer-in-log.db')
    mustOpen(file).close()
    const other = new Sqlite(file)
    other.pragma('wal_autocheckpoint = 0')
    other.pragma('user_version = 99')
    const before = readFileSync(file)
    expect(mustRefuse(file).code).toBe('newer')
    expect(readFileSync(file).equals(before)).toBe(true)
    other.close()
  })

  test('refuses a file that is no database, says the way out and leaves it', () => {
    writeFileSync(at('text.db'), 'not a database, but a letter to the yard\n'.repeat(20))
    const before = readFileSync(at('text.db'))
    const refusal = mustRefuse(at('text.db'))
    expect(refusal.code).toBe('corrupt')
    expect(refusal.message).toMatch(/Move it away to start with an empty store, or put a backup/)
    expect(readFileSync(at('text.db')).equals(before)).toBe(true)
  })

  test('refuses a store with overwritten pages', () => {
    const file = at('torn.db')
    const store = mustOpen(file)
    for (let n = 0; n < 40; n += 1) {
      store.jobs.create({ ...FIRST, id: `job-${n}`, statement: { notes: 'x'.repeat(2000) } })
    }
    store.close()
    const bytes = readFileSync(file)
    bytes.fill(0xa5, 4096)
    writeFileSync(file, bytes)
    expect(mustRefuse(file).code).toBe('corrupt')
    expect(readFileSync(file).equals(bytes)).toBe(true)
  })

  test("refuses another program's database", () => {
    readThenWrite(at('foreign.db'), 'CREATE TABLE songs (title TEXT)')
    readThenWrite(at('versioned.db'), 'PRAGMA user_version = 3; CREATE TABLE songs (title TEXT)')
    const refusal = mustRefuse(at('foreign.db'))
    expect(refusal.code).toBe('foreign')
    expect(mustRefuse(at('versioned.db')).code).toBe('foreign')
    expect(refusal.message).toMatch(/database of another program; it was left as it is/)
  })

  test('refuses a folder in the place of the file, and a file in the place of the folder', () => {
    mkdirSync(at('folder.db'))
    expect(mustRefuse(at('folder.db')).message).toMatch(/cannot be read/)
    writeFileSync(at('file'), '')
    expect(mustRefuse(at('file/jobs.db')).message).toMatch(/cannot be read/)
  })
})

describe('closing a store', () => {
  test('a store closed properly does not tell of a crash, and one left open by a dead process does', () => {
    const file = at('sessions.db')
    mustOpen(file).close()
    const second = mustOpen(file)
    expect(second.crashed).toBe(false)
    second.close()
    // 2^22 is past the largest process number that Linux gives
    readThenWrite(file, "INSERT INTO sessions VALUES ('gone', 4194305, '2026-11-24T00:00:00Z')")
    const third = mustOpen(file)
    expect(third.crashed).toBe(true)
    third.close()
    const fourth = mustOpen(file)
    expect(fourth.crashed).toBe(false)
    fourth.close()
  })

  test('a second copy that is still running is not taken for a crash', () => {
    const one = mustOpen(at('two.db'))
    const two = mustOpen(at('two.db'))
    expect(two.crashed).toBe(false)
    one.close()
    two.close()
  })
})
