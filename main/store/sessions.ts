import type { Database } from 'better-sqlite3'

/** Sessions of this very process: their pid is ours and tells nothing. */
const ours = new Set<string>()

/**
 * Every running copy of the program leaves a row here and takes it away when it closes properly.
 * A row whose process is gone tells of a crash or a kill.
 */
export function beginSession(
  db: Database,
  session: { id: string; pid: number; openedAt: string },
): { crashed: boolean } {
  return db
    .transaction(() => {
      const left = db.prepare('SELECT id, pid FROM sessions').all() as { id: string; pid: number }[]
      const dead = left.filter((row) => !ours.has(row.id) && (row.pid === session.pid || !isAlive(row.pid)))
      for (const row of dead) db.prepare('DELETE FROM sessions WHERE id = ?').run(row.id)
      db.prepare('INSERT INTO sessions (id, pid, opened_at) VALUES (?, ?, ?)').run(
        session.id,
        session.pid,
        session.openedAt,
      )
      ours.add(session.id)
      return { crashed: dead.length > 0 }
    })
    .immediate()
}

export function endSession(db: Database, id: string): void {
  ours.delete(id)
  db.prepare('DELETE FROM sessions WHERE id = ?').run(id)
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    // a process of another user is alive, though we may not signal it
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}
