import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { openStore } from '../../../main/store/index.ts'
import { MIGRATIONS, type Migration } from '../../../main/store/migrations.ts'
import { FIRST, mustOpen, NOON, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const at = (name: string) => join(folder, name)

/** A step that a later version of the program might take. */
const NEXT = MIGRATIONS.length + 1
const ADDS_PLACE: Migration = {
  version: NEXT,
  update: (db) =>
    db.exec(`
      ALTER TABLE jobs ADD COLUMN place TEXT NOT NULL DEFAULT '';
      UPDATE jobs SET place = coalesce(json_extract(statement, '$.place'), '');
    `),
}
const FAILS_HALFWAY: Migration = {
  version: NEXT + 1,
  update: (db) => {
    db.exec("DELETE FROM jobs; INSERT INTO settings VALUES ('half', 'done')")
    throw new Error('no room for it')
  },
}

function rows(file: string, table: string): unknown[] {
  const db = new Sqlite(file, { readonly: true })
  try {
    return db.prepare(`SELECT * FROM ${table}`).all()
  } finally {
    db.close()
  }
}

function storeOfThisVersion(name: string): string {
  const store = mustOpen(at(name))
  store.jobs.create({ ...FIRST, statement: { name: 'First', place: 'behind the barn' } })
  store.jobs.create({ ...FIRST, id: 'job-2', name: 'Zażółć ½', statement: {} })
  store.settings.write('last job', 'job-2')
  store.close()
  return at(name)
}

describe('bringing a store up to date', () => {
  test('versions ascend without a gap and each is a step from the one before', () => {
    expect(MIGRATIONS.map((step) => step.version)).toEqual(MIGRATIONS.map((_, index) => index + 1))
  })

  test('keeps whole rows of the version before and fills what is new', () => {
    const file = storeOfThisVersion('up.db')
    const store = mustOpen(file, [...MIGRATIONS, ADDS_PLACE])
    store.close()
    expect(rows(file, 'jobs')).toEqual([
      {
        id: 'job-1',
        name: 'First',
        revision: 1,
        saved_at: NOON.toISOString(),
        statement: '{"name":"First","place":"behind the barn"}',
        step_at: 0,
        removed_at: null,
        place: 'behind the barn',
      },
      {
        id: 'job-2',
        name: 'Zażółć ½',
        revision: 1,
        saved_at: NOON.toISOString(),
        statement: '{}',
        step_at: 0,
        removed_at: null,
        place: '',
      },
    ])
    expect(rows(file, 'settings')).toEqual([{ key: 'last job', value: 'job-2' }])
    expect(rows(file, 'job_versions')).toHaveLength(2)
  })

  test('from version 1 to 2 keeps jobs, versions and settings, and adds an empty rack', () => {
    const file = at('rack.db')
    const before = mustOpen(file, MIGRATIONS.slice(0, 1))
    before.jobs.create({ ...FIRST, statement: { name: 'First' } })
    before.settings.write('last job', 'job-1')
    before.close()
    const tables = ['jobs', 'job_versions', 'settings']
    const were = tables.map((table) => rows(file, table))
    mustOpen(file, MIGRATIONS.slice(0, 2)).close()
    expect(tables.map((table) => rows(file, table))).toEqual(were)
    expect(rows(file, 'offcuts')).toEqual([])
    expect(rows(file, 'jobs_cut')).toEqual([])
    expect(existsSync(`${file}.before-version-2`)).toBe(true)
  })

  /** An offcut as versions 2 and 3 wrote it. */
  function writeOldOffcut(file: string): void {
    const db = new Sqlite(file)
    db.prepare(
      `INSERT INTO offcuts (id, size, species, grade, treatment, length, from_job, added_at)
       VALUES ('offcut-1', '2x10', 'SP', 'No.2', 'treated', 1536, 'Heron Lane', '2026-03-01T10:00:00.000Z')`,
    ).run()
    db.close()
  }

  test('from version 2 to 3 keeps jobs and offcuts, and adds no price book', () => {
    const file = at('prices.db')
    const before = mustOpen(file, MIGRATIONS.slice(0, 2))
    before.jobs.create({ ...FIRST, statement: { name: 'First' } })
    before.settings.write('last job', 'job-1')
    before.close()
    writeOldOffcut(file)
    const tables = ['jobs', 'job_versions', 'settings', 'offcuts', 'jobs_cut']
    const were = tables.map((table) => rows(file, table))
    mustOpen(file, MIGRATIONS.slice(0, 3)).close()
    expect(tables.map((table) => rows(file, table))).toEqual(were)
    expect(were[3]).toHaveLength(1)
    expect(rows(file, 'price_book')).toEqual([])
    expect(existsSync(`${file}.before-version-3`)).toBe(true)
  })

  test('from version 3 to 4 keeps every row; of old offcuts it is not known whose plan left them', () => {
    const file = at('left-by.db')
    const before = mustOpen(file, MIGRATIONS.slice(0, 3))
    before.jobs.create({ ...FIRST, statement: { name: 'First' } })
    before.close()
    writeOldOffcut(file)
    const tables = ['jobs', 'job_versions', 'settings', 'jobs_cut', 'price_book']
    const were = tables.map((table) => rows(file, table))
    const offcuts = rows(file, 'offcuts') as object[]
    mustOpen(file, MIGRATIONS.slice(0, 4)).close()
    expect(tables.map((table) => rows(file, table))).toEqual(were)
    expect(rows(file, 'offcuts')).toEqual(offcuts.map((row) => ({ ...row, left_by: null })))
    expect(existsSync(`${file}.before-version-4`)).toBe(true)
  })

  test('from version 4 to 5 keeps every job; none has a step to undo yet', () => {
    const file = at('steps.db')
    const before = mustOpen(file, MIGRATIONS.slice(0, 4))
    before.jobs.create({ ...FIRST, statement: { name: 'First' } })
    before.close()
    const store = mustOpen(file, MIGRATIONS.slice(0, 5))
    expect(store.jobs.read('job-1')?.statement).toEqual({ name: 'First' })
    expect(store.jobs.timeline('job-1')).toEqual({ first: 0, states: [], labels: [], at: 0 })
    store.close()
  })

  test('from version 6 to 7 keeps every job, and no quote was sent yet', () => {
    const file = at('quotes.db')
    const before = mustOpen(file, MIGRATIONS.slice(0, 6))
    before.jobs.create({ ...FIRST, statement: { name: 'First' } })
    before.close()
    const store = mustOpen(file, MIGRATIONS.slice(0, 7))
    expect(store.jobs.read('job-1')?.statement).toEqual({ name: 'First' })
    expect(store.quotes.list('job-1')).toEqual([])
    store.close()
  })

  test('from version 7 to 8 keeps every job, and nothing is marked at the saw yet', () => {
    const file = at('saw-days.db')
    const before = mustOpen(file, MIGRATIONS.slice(0, 7))
    before.jobs.create({ ...FIRST, statement: { name: 'First' } })
    before.close()
    const store = mustOpen(file, MIGRATIONS.slice(0, 8))
    expect(store.jobs.read('job-1')?.statement).toEqual({ name: 'First' })
    expect(store.sawDays.list('job-1')).toEqual([])
    store.close()
  })

  test('from version 8 to 9 keeps the price book, and no change of it can be taken back yet', () => {
    const file = at('price-books.db')
    mustOpen(file, MIGRATIONS.slice(0, 8)).close()
    const old = new Sqlite(file)
    old.prepare('INSERT INTO price_book VALUES (1, ?, ?)').run('{ "name": "½" }', '2026-11-01T10:00:00Z')
    old.close()
    const store = mustOpen(file)
    expect(store.priceBook.read()).toEqual({ text: '{ "name": "½" }', importedAt: '2026-11-01T10:00:00Z' })
    expect(store.priceBook.lastChange()).toBeNull()
    store.priceBook.takeBack()
    store.priceBook.makeAgain()
    expect(store.priceBook.read()?.text).toBe('{ "name": "½" }')
    store.close()
  })

  test('from version 9 to 10 keeps the changes of prices that can be taken back, which can then be made again', () => {
    const file = at('price-steps.db')
    mustOpen(file, MIGRATIONS.slice(0, 9)).close()
    const old = new Sqlite(file)
    const add = old.prepare('INSERT INTO price_books_before VALUES (?, ?, ?, ?)')
    add.run(7, 'The yard’s book', null, null)
    add.run(8, '2 prices', '{ "name": "½" }', 'then')
    old.prepare('INSERT INTO price_book VALUES (1, ?, ?)').run('{ "name": "new" }', 'later')
    old.close()
    const { priceBook, close } = mustOpen(file)
    expect([priceBook.lastChange(), priceBook.nextChange()]).toEqual(['2 prices', null])
    priceBook.takeBack()
    expect(priceBook.read()).toEqual({ text: '{ "name": "½" }', importedAt: 'then' })
    priceBook.takeBack()
    expect(priceBook.read()).toBeNull()
    expect([priceBook.lastChange(), priceBook.nextChange()]).toEqual([null, 'The yard’s book'])
    priceBook.makeAgain()
    priceBook.makeAgain()
    expect(priceBook.read()).toEqual({ text: '{ "name": "new" }', importedAt: 'later' })
    priceBook.takeBack()
    // another change, and what was taken back cannot be made again
    for (let n = 1; n <= 40; n += 1) priceBook.write({ text: `${n}`, importedAt: 'later' }, `change ${n}`)
    expect(priceBook.nextChange()).toBeNull()
    for (let n = 40; n > 1; n -= 1) {
      expect(priceBook.lastChange()).toBe(`change ${n}`)
      priceBook.takeBack()
      expect(priceBook.read()?.text).toBe(`${n - 1}`)
    }
    close()
  })

  test('makes a copy of the store before the first step, readable as the version it was', () => {
    const file = storeOfThisVersion('copied.db')
    const store = mustOpen(file, [...MIGRATIONS, ADDS_PLACE])
    expect(store.backup).toBe(`${file}.before-version-${NEXT}`)
    store.close()
    const old = mustOpen(store.backup as string)
    expect(old.jobs.list().map((job) => job.id)).toEqual(['job-1', 'job-2'])
    old.close()
  })

  test('makes no copy of a new store', () => {
    const store = mustOpen(at('fresh.db'))
    expect(store.backup).toBe(null)
    store.close()
    expect(readdirSync(folder).filter((name) => name.startsWith('fresh.db.'))).toEqual([])
  })

  test('a step that fails is undone whole, and the steps before it stay', () => {
    const file = storeOfThisVersion('fails.db')
    const opened = openStore({
      file,
      now: () => NOON,
      newId: () => 's',
      migrations: [...MIGRATIONS, ADDS_PLACE, FAILS_HALFWAY],
    })
    expect(opened).toMatchObject({ ok: false, error: { code: 'unreachable' } })
    expect(rows(file, 'jobs')).toHaveLength(2)
    expect(rows(file, 'settings')).toEqual([{ key: 'last job', value: 'job-2' }])
    const again = mustOpen(file, [...MIGRATIONS, ADDS_PLACE])
    expect(again.jobs.list()).toHaveLength(2)
    again.close()
    expect(existsSync(`${file}.before-version-${NEXT}`)).toBe(true)
  })
})
