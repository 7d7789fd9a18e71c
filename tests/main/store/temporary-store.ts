import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'
import { openStore, type Store } from '../../../main/store/index.ts'
import type { Migration } from '../../../main/store/migrations.ts'

/** A folder of its own for a test file, taken away afterwards. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'kerfwright-store-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

export const NOON = new Date('2026-11-25T12:00:00.000Z')

/** Opens a store that must open. */
export function mustOpen(file: string, migrations?: readonly Migration[]): Store {
  const opened = openStore({
    file,
    now: () => NOON,
    newId: () => crypto.randomUUID(),
    ...(migrations === undefined ? {} : { migrations }),
  })
  if (!opened.ok) throw new Error(opened.error.message)
  return opened.value
}

/** The sentence with which a store that must be refused is refused. */
export function mustRefuse(file: string): { code: string; message: string } {
  const opened = openStore({ file, now: () => NOON, newId: () => crypto.randomUUID() })
  if (opened.ok) {
    opened.value.close()
    throw new Error(`${file} was opened`)
  }
  return opened.error
}

export const FIRST = { id: 'job-1', name: 'First', savedAt: NOON.toISOString(), label: 'Created' }
