import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { redact } from './redact.ts'

export interface Log {
  info(event: string, details?: object): void
  error(event: string, details?: object): void
}

const largest = 1_000_000

/**
 * Lines of JSON in `kerfwright.log` of the folder; one older file is kept beside it. Written at once, so that the
 * last lines before a crash are there. A log that cannot be written (full disk, no permission) must not stop the
 * program: one warning goes to stderr and the log is silent from then on.
 */
export function createLog(folder: string, now: () => Date = () => new Date()): Log {
  const file = join(folder, 'kerfwright.log')
  let usable = true
  const write = (level: 'info' | 'error', event: string, details: object) => {
    if (!usable) return
    try {
      mkdirSync(folder, { recursive: true })
      if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) > largest) renameSync(file, `${file}.1`)
      const line = { time: now().toISOString(), level, event, ...(redact(details) as object) }
      appendFileSync(file, `${JSON.stringify(line)}\n`, { mode: 0o600 })
    } catch (fault) {
      usable = false
      process.stderr.write(`The log ${file} cannot be written: ${(fault as Error).message}\n`)
    }
  }
  return {
    info: (event, details = {}) => write('info', event, details),
    error: (event, details = {}) => write('error', event, details),
  }
}
