import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { RevisionConflict, STEPS_KEPT } from '../../../main/store/index.ts'
import { VERSIONS_KEPT } from '../../../main/store/jobs.ts'
import type { TimelineChange } from '../../../shared/contract/index.ts'
import { FIRST, mustOpen, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const at = (name: string) => join(folder, name)
const LATER = '2026-11-25T12:05:00.000Z'

describe('jobs in the store', () => {
  test('a job is there again, word for word, after the store was closed', () => {
    const statement = {
      name: "O'Hare; DROP TABLE jobs",
      notes: 'quote " ½ 日本 \u0000',
      size: { width: '16 ft' },
    }
    const store = mustOpen(at('round.db'))
    store.jobs.create({ ...FIRST, name: statement.name, statement })
    store.close()
    const again = mustOpen(at('round.db'))
    expect(again.jobs.read('job-1')).toEqual({
      id: 'job-1',
      name: statement.name,
      revision: 1,
      savedAt: FIRST.savedAt,
      statement,
    })
    again.close()
  })

  test('a save raises the revision and keeps the version before it with its label, over a restart', () => {
    const store = mustOpen(at('save.db'))
    store.jobs.create({ ...FIRST, statement: { size: { width: '16 ft' } } })
    const saved = store.jobs.save({
      ...FIRST,
      revision: 1,
      savedAt: LATER,
      label: 'Width',
      statement: { size: { width: '18 ft' } },
    })
    expect(saved).toEqual({ revision: 2 })
    store.close()
    const again = mustOpen(at('save.db'))
    expect(
      again.jobs.versions('job-1').map(({ revision, label, statement }) => [revision, label, statement]),
    ).toEqual([
      [2, 'Width', { size: { width: '18 ft' } }],
      [1, 'Created', { size: { width: '16 ft' } }],
    ])
    again.close()
  })

  test('steps are there again after a restart, undone ones too, and a new one replaces those that were undone', () => {
    const store = mustOpen(at('steps.db'))
    store.jobs.create({ ...FIRST, statement: { n: 0 } })
    const step = (n: number) => ({ label: `step ${n}`, statement: { n } })
    const save = (revision: number, n: number, timeline: TimelineChange) =>
      store.jobs.save({ ...FIRST, revision, label: '', statement: { n }, timeline })
    save(1, 2, { keep: 0, add: [step(0), step(1), step(2)], at: 2 })
    save(2, 1, { keep: 3, add: [], at: 1 })
    store.close()
    const again = mustOpen(at('steps.db'))
    const { states, labels, at: place } = again.jobs.timeline('job-1')
    expect([states, labels, place]).toEqual([[{ n: 0 }, { n: 1 }, { n: 2 }], ['step 1', 'step 2'], 1])
    again.jobs.save({
      ...FIRST,
      revision: 3,
      label: '',
      statement: { n: 9 },
      timeline: { keep: 2, add: [step(9)], at: 2 },
    })
    expect(again.jobs.timeline('job-1')).toEqual({
      first: 0,
      states: [{ n: 0 }, { n: 1 }, { n: 9 }],
      labels: ['step 1', 'step 9'],
      at: 2,
    })
    again.close()
  })

  test('the oldest steps make room, and places go on counting', () => {
    const store = mustOpen(at('many-steps.db'))
    store.jobs.create({ ...FIRST, statement: { n: 0 } })
    const add = Array.from({ length: STEPS_KEPT + 1 }, (_, n) => ({ label: '', statement: { n } }))
    store.jobs.save({
      ...FIRST,
      revision: 1,
      label: '',
      statement: { n: STEPS_KEPT },
      timeline: { keep: 0, add, at: STEPS_KEPT },
    })
    store.jobs.save({
      ...FIRST,
      revision: 2,
      label: '',
      statement: { n: -1 },
      timeline: { keep: STEPS_KEPT + 1, add: [{ label: 'last', statement: { n: -1 } }], at: STEPS_KEPT + 1 },
    })
    const timeline = store.jobs.timeline('job-1')
    expect([timeline.first, timeline.states.length, timeline.at]).toEqual([1, STEPS_KEPT + 1, STEPS_KEPT])
    expect(timeline.states[timeline.at]).toEqual({ n: -1 })
    store.close()
  })

  test('a save of what is already stored makes no new version', () => {
    const store = mustOpen(at('same.db'))
    store.jobs.create({ ...FIRST, statement: { a: 1 } })
    expect(store.jobs.save({ ...FIRST, revision: 1, statement: { a: 1 } })).toEqual({ revision: 1 })
    expect(store.jobs.versions('job-1')).toHaveLength(1)
    store.close()
  })

  test('a save on an old revision is refused and changes nothing', () => {
    const one = mustOpen(at('conflict.db'))
    const two = mustOpen(at('conflict.db'))
    one.jobs.create({ ...FIRST, statement: { a: 1 } })
    two.jobs.save({ ...FIRST, revision: 1, statement: { a: 2 } })
    expect(() => one.jobs.save({ ...FIRST, revision: 1, statement: { a: 3 } })).toThrow(RevisionConflict)
    expect(one.jobs.read('job-1')).toMatchObject({ revision: 2, statement: { a: 2 } })
    one.close()
    two.close()
  })

  test('a save of a job that is not there says so with null', () => {
    const store = mustOpen(at('none.db'))
    expect(store.jobs.save({ ...FIRST, revision: 1, statement: {} })).toBe(null)
    store.close()
  })

  test('only so many versions are kept, the newest', () => {
    const store = mustOpen(at('many.db'))
    store.jobs.create({ ...FIRST, statement: { n: 0 } })
    const db = new Sqlite(at('many.db'))
    db.prepare('UPDATE jobs SET revision = 1000').run()
    for (let n = 1; n < 1000; n += 1) {
      db.prepare("INSERT OR IGNORE INTO job_versions VALUES ('job-1', ?, '', '', '{}')").run(n)
    }
    db.close()
    store.jobs.save({ ...FIRST, revision: 1000, statement: { n: 1 } })
    const kept = store.jobs.versions('job-1').map((version) => version.revision)
    const newest = kept[0] ?? 0
    expect(store.jobs.version('job-1', newest)).toEqual(store.jobs.versions('job-1')[0])
    expect(store.jobs.version('job-1', newest + 1)).toBeNull()
    expect(kept[0]).toBe(1001)
    expect(kept.at(-1)).toBe(1001 - VERSIONS_KEPT + 1)
    store.close()
  })

  test('jobs are listed newest first', () => {
    const store = mustOpen(at('list.db'))
    store.jobs.create({ ...FIRST, statement: {} })
    store.jobs.create({ ...FIRST, id: 'job-2', savedAt: LATER, statement: {} })
    expect(store.jobs.list().map((job) => job.id)).toEqual(['job-2', 'job-1'])
    store.close()
  })
})

describe('settings', () => {
  test('are kept by name and replaced', () => {
    const store = mustOpen(at('settings.db'))
    expect(store.settings.read('last job')).toBe(null)
    store.settings.write('last job', 'a')
    store.settings.write('last job', 'b')
    expect(store.settings.read('last job')).toBe('b')
    store.close()
  })
})
