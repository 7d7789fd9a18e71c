import { spawn } from 'node:child_process'
import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { FIRST, mustOpen, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const WRITER = join(import.meta.dirname, 'writer.ts')

function startWriter(file: string, count?: number) {
  const args = [WRITER, file, 'job-1', ...(count === undefined ? [] : [String(count)])]
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] })
  let output = ''
  child.stdout.on('data', (data) => {
    output += data
  })
  return {
    kill: () => child.kill('SIGKILL'),
    exited: new Promise<number | null>((resolve) => child.on('close', (code) => resolve(code))),
    lines: () => output.split('\n').slice(0, -1),
  }
}

async function until(condition: () => boolean): Promise<void> {
  while (!condition()) await new Promise((resolve) => setTimeout(resolve, 2))
}

function integrity(file: string): unknown {
  const db = new Sqlite(file)
  try {
    return db.pragma('integrity_check', { simple: true })
  } finally {
    db.close()
  }
}

describe('a process killed while it writes', () => {
  test('loses no save that it reported, tears none, and the next start knows of it', async () => {
    const file = join(folder, 'killed.db')
    const first = mustOpen(file)
    first.jobs.create({ ...FIRST, statement: { n: 1 } })
    first.close()
    for (let round = 1; round <= 5; round += 1) {
      const writer = startWriter(file)
      await until(() => writer.lines().length >= 7 * round)
      writer.kill()
      await writer.exited
      const reported = Number(writer.lines().at(-1))
      const store = mustOpen(file)
      expect(store.crashed).toBe(true)
      const job = store.jobs.read('job-1')
      expect(job?.revision).toBeGreaterThanOrEqual(reported)
      expect(job?.statement.n).toBe(job?.revision)
      expect(store.jobs.versions('job-1')[0]?.statement).toEqual(job?.statement)
      store.close()
      expect(integrity(file)).toBe('ok')
    }
  })

  test('two processes writing one job lose nothing: each revision is reported by one of them', async () => {
    const file = join(folder, 'shared.db')
    const first = mustOpen(file)
    first.jobs.create({ ...FIRST, statement: { n: 1 } })
    first.close()
    const writers = [startWriter(file, 60), startWriter(file, 60)]
    expect(await Promise.all(writers.map((writer) => writer.exited))).toEqual([0, 0])
    const revisions = writers.flatMap((writer) => writer.lines()).filter((line) => line !== 'conflict')
    expect(revisions.map(Number).sort((a, b) => a - b)).toEqual(Array.from({ length: 120 }, (_, n) => n + 2))
  })
})
