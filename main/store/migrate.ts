import type { Database } from 'better-sqlite3'
import type { Migration } from './migrations.ts'

/** Version of the layout that this program writes. */
export function latestVersion(migrations: readonly Migration[]): number {
  return migrations.at(-1)?.version ?? 0
}

export function storedVersion(db: Database): number {
  return db.pragma('user_version', { simple: true }) as number
}

/**
 * Applies what is missing, each step in its own transaction with its version number, so that a kill
 * between two steps leaves a store of the version it says. A copy of the file is made before the first
 * step that touches rows.
 * @returns path of the copy, or null where none was needed
 */
export function migrate(
  db: Database,
  migrations: readonly Migration[],
  backup: (version: number) => string,
): string | null {
  const before = storedVersion(db)
  const missing = migrations.filter((step) => step.version > before)
  if (missing.length === 0) return null
  const copy = before > 0 ? backup(before) : null
  for (const step of missing) {
    db.transaction(() => {
      // another copy of the program may have taken this step while we waited for the lock
      if (storedVersion(db) >= step.version) return
      step.update(db)
      db.pragma(`user_version = ${step.version}`)
    }).immediate()
  }
  return copy
}
