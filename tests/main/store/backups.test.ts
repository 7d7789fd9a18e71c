import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { BACKUPS_KEPT } from '../../../main/store/backups.ts'
import { FIRST, mustOpen, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const storeIn = (name: string) => join(folder, name, 'jobs.db')
const day = (n: number) => `2026-11-${String(n).padStart(2, '0')}`

describe('daily copies of the store', () => {
  test('one is made a day, and holds the jobs as they were then', () => {
    const store = mustOpen(storeIn('daily'))
    store.jobs.create({ ...FIRST, statement: { name: 'First' } })
    const made = store.backUp(day(25))
    store.jobs.create({ ...FIRST, id: 'job-2', statement: { name: 'Second' } })
    expect(store.backUp(day(25))).toEqual({ ok: true, value: null })
    store.close()
    if (!made.ok || made.value === null) throw new Error('no copy was made')
    const copy = mustOpen(made.value)
    expect(copy.jobs.list().map((job) => job.id)).toEqual(['job-1'])
    copy.close()
  })

  test('the oldest go, and other files in the folder stay', () => {
    const store = mustOpen(storeIn('rotating'))
    const backups = join(folder, 'rotating', 'backups')
    mkdirSync(backups)
    writeFileSync(join(backups, 'jobs-mine.db'), 'mine')
    for (let n = 1; n <= BACKUPS_KEPT + 3; n += 1) store.backUp(day(n))
    store.close()
    const names = readdirSync(backups).sort()
    expect(names).toHaveLength(BACKUPS_KEPT + 1)
    expect(names[0]).toBe(`jobs-${day(4)}.db`)
    expect(names.at(-1)).toBe('jobs-mine.db')
  })

  test('a copy that was cut off halfway is made anew, and never passes for a backup', () => {
    const store = mustOpen(storeIn('cut-off'))
    const backups = join(folder, 'cut-off', 'backups')
    mkdirSync(backups)
    writeFileSync(join(backups, `jobs-${day(25)}.db.unfinished`), 'half a file')
    expect(store.backUp(day(25))).toEqual({ ok: true, value: join(backups, `jobs-${day(25)}.db`) })
    expect(existsSync(join(backups, `jobs-${day(25)}.db.unfinished`))).toBe(false)
    store.close()
  })

  test('where the disk refuses, a sentence says so and the store goes on', () => {
    const store = mustOpen(storeIn('refused'))
    writeFileSync(join(folder, 'refused', 'backups'), 'a file where the folder should be')
    const made = store.backUp(day(25))
    expect(made).toMatchObject({
      ok: false,
      error: expect.stringMatching(/^No backup of .* could be made: /),
    })
    store.jobs.create({ ...FIRST, statement: {} })
    expect(store.jobs.list()).toHaveLength(1)
    store.close()
  })
})
