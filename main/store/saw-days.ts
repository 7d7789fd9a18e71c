import type { Database } from 'better-sqlite3'

/** How the day goes with the boards of a job's products, as text by the id of the product's plan. */
export interface SawDayRepository {
  list(jobId: string): readonly { readonly planId: string; readonly text: string }[]
  write(jobId: string, planId: string, text: string): void
  remove(jobId: string, planId: string): void
}

export function sawDayRepository(db: Database): SawDayRepository {
  return {
    list: (jobId) => {
      const rows = db
        .prepare('SELECT plan_id, text FROM saw_days WHERE job_id = ? ORDER BY plan_id')
        .all(jobId) as { plan_id: string; text: string }[]
      return rows.map(({ plan_id, text }) => ({ planId: plan_id, text }))
    },
    write: (jobId, planId, text) => {
      db.prepare(
        'INSERT INTO saw_days (job_id, plan_id, text) VALUES (?, ?, ?) ON CONFLICT (job_id, plan_id) DO UPDATE SET text = excluded.text',
      ).run(jobId, planId, text)
    },
    remove: (jobId, planId) => {
      db.prepare('DELETE FROM saw_days WHERE job_id = ? AND plan_id = ?').run(jobId, planId)
    },
  }
}
