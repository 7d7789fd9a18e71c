import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import type { Database } from 'better-sqlite3'

/** Days whose copies are kept: two working weeks. */
export const BACKUPS_KEPT = 10

/** The folder of the daily copies, beside the store. */
export function backupFolder(file: string): string {
  return join(dirname(file), 'backups')
}

/**
 * Makes the copy of the day, once, and drops the oldest. `day` as 2026-11-25. The copy is written under another name
 * first, so that one cut off halfway never passes for a backup. Returns the copy's path, or null where the day has one.
 */
export function backUp(db: Database, file: string, day: string): string | null {
  const folder = backupFolder(file)
  const stem = basename(file, '.db')
  const copy = join(folder, `${stem}-${day}.db`)
  if (existsSync(copy)) return null
  mkdirSync(folder, { recursive: true })
  const half = `${copy}.unfinished`
  rmSync(half, { force: true })
  db.prepare('VACUUM INTO ?').run(half)
  renameSync(half, copy)
  for (const old of backupsIn(folder, stem).slice(BACKUPS_KEPT)) rmSync(join(folder, old), { force: true })
  return copy
}

/** Names of the daily copies, newest first. */
function backupsIn(folder: string, stem: string): readonly string[] {
  const dated = /^\d{4}-\d{2}-\d{2}\.db$/
  return readdirSync(folder)
    .filter((name) => name.startsWith(`${stem}-`) && dated.test(name.slice(stem.length + 1)))
    .sort()
    .reverse()
}
