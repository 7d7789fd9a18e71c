import type { Database } from 'better-sqlite3'
import type { JobStatement } from '../../core/job/index.ts'
import type { JobSummary, Timeline, TimelineChange } from '../../shared/contract/index.ts'
import { RevisionConflict } from './refusal.ts'
import { timelineRepository } from './timelines.ts'

/** Old versions kept per job: months of editing, and under a megabyte. */
export const VERSIONS_KEPT = 200

export interface JobRecord extends JobSummary {
  readonly statement: JobStatement
}

export interface JobVersion {
  readonly revision: number
  readonly label: string
  readonly savedAt: string
  readonly statement: JobStatement
}

interface JobRow {
  id: string
  name: string
  revision: number
  saved_at: string
  statement: string
}

/** Jobs as stated by their user, each with the versions before it. */
export interface JobRepository {
  list(): readonly JobSummary[]
  read(id: string): JobRecord | null
  create(job: {
    id: string
    name: string
    savedAt: string
    label: string
    statement: JobStatement
  }): JobRecord
  /** Throws RevisionConflict where `revision` is not the stored one; null where there is no such job. */
  save(change: {
    id: string
    revision: number
    name: string
    savedAt: string
    label: string
    statement: JobStatement
    timeline?: TimelineChange | undefined
  }): { readonly revision: number } | null
  /** What undo and redo walk through; empty for a job that was never changed. */
  timeline(id: string): Timeline
  /** Takes a job off the list, or brings it back; false where there is no such job. */
  setRemoved(id: string, at: string | null): boolean
  /** Jobs off the list, the last one first. */
  removed(): readonly JobSummary[]
  /** Newest first, the present one among them. */
  versions(id: string): readonly JobVersion[]
  /** One of them; null where it is no longer kept. */
  version(id: string, revision: number): JobVersion | null
}

export function jobRepository(db: Database): JobRepository {
  const timelines = timelineRepository(db)
  const insertVersion = db.prepare(
    'INSERT INTO job_versions (job_id, revision, label, saved_at, statement) VALUES (?, ?, ?, ?, ?)',
  )
  const selectJob = db.prepare('SELECT id, name, revision, saved_at, statement FROM jobs WHERE id = ?')
  const selectVersion = db.prepare(
    'SELECT revision, label, saved_at, statement FROM job_versions WHERE job_id = ? AND revision = ?',
  )
  const update = db.prepare(
    'UPDATE jobs SET name = ?, revision = ?, saved_at = ?, statement = ? WHERE id = ?',
  )
  const prune = db.prepare('DELETE FROM job_versions WHERE job_id = ? AND revision <= ?')

  const create = db.transaction((job: Parameters<JobRepository['create']>[0]): JobRecord => {
    const text = JSON.stringify(job.statement)
    db.prepare('INSERT INTO jobs (id, name, revision, saved_at, statement) VALUES (?, ?, 1, ?, ?)').run(
      job.id,
      job.name,
      job.savedAt,
      text,
    )
    insertVersion.run(job.id, 1, job.label, job.savedAt, text)
    return { id: job.id, name: job.name, revision: 1, savedAt: job.savedAt, statement: job.statement }
  })

  const save = db.transaction((change: Parameters<JobRepository['save']>[0]) => {
    const row = selectJob.get(change.id) as JobRow | undefined
    if (row === undefined) return null
    if (row.revision !== change.revision) throw new RevisionConflict(row.name, row.revision)
    const text = JSON.stringify(change.statement)
    if (change.timeline) timelines.change(change.id, change.timeline)
    if (text === row.statement) return { revision: row.revision }
    const revision = row.revision + 1
    update.run(change.name, revision, change.savedAt, text, change.id)
    insertVersion.run(change.id, revision, change.label, change.savedAt, text)
    prune.run(change.id, revision - VERSIONS_KEPT)
    return { revision }
  })

  return {
    list: () =>
      (
        db
          .prepare(
            'SELECT id, name, revision, saved_at FROM jobs WHERE removed_at IS NULL ORDER BY saved_at DESC, id',
          )
          .all() as JobRow[]
      ).map(summaryOf),
    removed: () =>
      (
        db
          .prepare(
            'SELECT id, name, revision, saved_at FROM jobs WHERE removed_at IS NOT NULL ORDER BY removed_at DESC, id',
          )
          .all() as JobRow[]
      ).map(summaryOf),
    setRemoved: (id, at) =>
      db.prepare('UPDATE jobs SET removed_at = ? WHERE id = ?').run(at, id).changes === 1,
    read: (id) => {
      const row = selectJob.get(id) as JobRow | undefined
      return row === undefined ? null : { ...summaryOf(row), statement: JSON.parse(row.statement) }
    },
    create: (job) => whenBusyOnceMore(() => create.immediate(job)),
    save: (change) => whenBusyOnceMore(() => save.immediate(change)),
    timeline: timelines.read,
    versions: (id) =>
      (
        db
          .prepare(
            'SELECT revision, label, saved_at, statement FROM job_versions WHERE job_id = ? ORDER BY revision DESC',
          )
          .all(id) as VersionRow[]
      ).map(versionOf),
    version: (id, revision) => {
      const row = selectVersion.get(id, revision) as VersionRow | undefined
      return row === undefined ? null : versionOf(row)
    },
  }
}

type VersionRow = JobRow & { readonly label: string }

function versionOf(row: VersionRow): JobVersion {
  return {
    revision: row.revision,
    label: row.label,
    savedAt: row.saved_at,
    statement: JSON.parse(row.statement),
  }
}

function summaryOf(row: JobRow): JobSummary {
  return { id: row.id, name: row.name, revision: row.revision, savedAt: row.saved_at }
}

/** Two copies of the program writing in tight loops can starve one past its time limit; once more is enough. */
function whenBusyOnceMore<T>(write: () => T): T {
  try {
    return write()
  } catch (error) {
    if ((error as { code?: string }).code !== 'SQLITE_BUSY') throw error
    return write()
  }
}
