import type { Database } from 'better-sqlite3'
import type { ProductClass } from '../../core/frame/index.ts'
import type { Ticks } from '../../core/units/index.ts'
import type { StoredOffcut } from '../../shared/contract/index.ts'

/** Offcuts kept from job to job. One that was cut up or thrown away is on hand no more. */
export interface OffcutRepository {
  /** On hand, by product, longest first. */
  list(): readonly StoredOffcut[]
  /** What a job may be cut from: the rack without what it left there, and with what it took from it. */
  listFor(jobId: string): readonly StoredOffcut[]
  add(offcuts: readonly StoredOffcut[]): void
  /** @returns how many of them were on hand */
  remove(ids: readonly string[]): number
  /** Notes a job as cut: what it used off the rack and what it leaves there, in one step. False: it was noted before. */
  takeFromJob(cut: {
    readonly jobId: string
    readonly cutAt: string
    readonly used: readonly string[]
    readonly left: readonly StoredOffcut[]
  }): boolean
}

interface Row {
  id: string
  size: string
  species: string
  grade: string
  treatment: string
  length: number
  from_job: string
  added_at: string
}

export function offcutRepository(db: Database): OffcutRepository {
  const insertAll = (offcuts: readonly StoredOffcut[], leftBy: string | null): void => {
    const insert = db.prepare(
      'INSERT INTO offcuts (id, size, species, grade, treatment, length, from_job, added_at, used_by, left_by) VALUES (?, ?, ?, ?, ?, ?, ?, ?, NULL, ?)',
    )
    for (const { id, product, length, fromJob, addedAt } of offcuts) {
      const { size, species, grade, treatment } = product
      insert.run(id, size, species, grade, treatment, length, fromJob, addedAt, leftBy)
    }
  }
  const add = db.transaction((offcuts: readonly StoredOffcut[]) => insertAll(offcuts, null))
  const remove = db.transaction((ids: readonly string[]) => {
    const gone = db.prepare('DELETE FROM offcuts WHERE id = ? AND used_by IS NULL')
    return ids.reduce((sum, id) => sum + gone.run(id).changes, 0)
  })
  const takeFromJob = db.transaction((cut: Parameters<OffcutRepository['takeFromJob']>[0]) => {
    const noted = db
      .prepare('INSERT OR IGNORE INTO jobs_cut (job_id, cut_at) VALUES (?, ?)')
      .run(cut.jobId, cut.cutAt)
    if (noted.changes === 0) return false
    const use = db.prepare('UPDATE offcuts SET used_by = ? WHERE id = ? AND used_by IS NULL')
    for (const id of cut.used) use.run(cut.jobId, id)
    insertAll(cut.left, cut.jobId)
    return true
  })
  const read = (where: string, values: readonly string[]): StoredOffcut[] =>
    (
      db
        .prepare(
          `SELECT * FROM offcuts WHERE ${where} ORDER BY size, species, grade, treatment, length DESC, added_at, id`,
        )
        .all(...values) as Row[]
    ).map(offcutOf)
  return {
    list: () => read('used_by IS NULL', []),
    listFor: (jobId) => read('(used_by IS NULL AND left_by IS NOT ?) OR used_by = ?', [jobId, jobId]),
    add: (offcuts) => add.immediate(offcuts),
    remove: (ids) => remove.immediate(ids),
    takeFromJob: (cut) => takeFromJob.immediate(cut),
  }
}

/** The row's words were checked against the choices of the job's fields before they were written. */
function offcutOf(row: Row): StoredOffcut {
  const { size, species, grade, treatment } = row
  return {
    id: row.id,
    product: { size, species, grade, treatment } as ProductClass,
    length: row.length as Ticks,
    fromJob: row.from_job,
    addedAt: row.added_at,
  }
}
