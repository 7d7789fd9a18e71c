import type { Database } from 'better-sqlite3'
import type { JobStatement } from '../../core/job/index.ts'
import type { Timeline, TimelineChange } from '../../shared/contract/index.ts'

/** Steps that can be undone in a job after a restart: years of evenings, and a few megabytes at the most. */
export const STEPS_KEPT = 2000

interface StepRow {
  place: number
  label: string
  statement: string
}

/** The steps of jobs, for undo and redo over a restart. Runs inside the transaction of the save it belongs to. */
export interface TimelineRepository {
  read(jobId: string): Timeline
  change(jobId: string, change: TimelineChange): void
}

export function timelineRepository(db: Database): TimelineRepository {
  return {
    read(jobId) {
      const rows = db
        .prepare('SELECT place, label, statement FROM job_steps WHERE job_id = ? ORDER BY place')
        .all(jobId) as StepRow[]
      const first = rows[0]?.place ?? 0
      const at = db.prepare('SELECT step_at FROM jobs WHERE id = ?').pluck().get(jobId)
      return {
        first,
        states: rows.map((row): JobStatement => JSON.parse(row.statement)),
        labels: rows.slice(1).map((row) => row.label),
        at: Math.min(Math.max(0, Number(at ?? 0) - first), Math.max(0, rows.length - 1)),
      }
    },
    change(jobId, change) {
      const last = db.prepare('SELECT max(place) FROM job_steps WHERE job_id = ?').pluck().get(jobId)
      // a window that kept more than is stored here cannot leave a hole
      const keep = Math.min(change.keep, ((last as number | null) ?? -1) + 1)
      db.prepare('DELETE FROM job_steps WHERE job_id = ? AND place >= ?').run(jobId, keep)
      const insert = db.prepare('INSERT INTO job_steps (job_id, place, label, statement) VALUES (?, ?, ?, ?)')
      for (const [n, step] of change.add.entries())
        insert.run(jobId, keep + n, step.label, JSON.stringify(step.statement))
      const oldest = keep + change.add.length - STEPS_KEPT - 1
      db.prepare('DELETE FROM job_steps WHERE job_id = ? AND place < ?').run(jobId, oldest)
      const at = Math.max(0, change.at - (change.keep - keep))
      db.prepare('UPDATE jobs SET step_at = ? WHERE id = ?').run(at, jobId)
    },
  }
}
