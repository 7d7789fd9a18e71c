import type { Database } from 'better-sqlite3'

/** Small facts that outlive a session, by name. */
export interface Settings {
  read(key: SettingKey): string | null
  write(key: SettingKey, value: string): void
}

export type SettingKey = 'last job' | 'firm' | 'cut list' | 'window'

export function settings(db: Database): Settings {
  const select = db.prepare('SELECT value FROM settings WHERE key = ?').pluck()
  const upsert = db.prepare(
    'INSERT INTO settings (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value',
  )
  return {
    read: (key) => (select.get(key) as string | undefined) ?? null,
    write: (key, value) => {
      upsert.run(key, value)
    },
  }
}
