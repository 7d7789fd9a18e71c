import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { makeStore } from '../../../main/store/make-store.ts'
import { MIGRATIONS } from '../../../main/store/migrations.ts'
import { FIRST, mustOpen, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const OPENER = join(import.meta.dirname, 'opener.ts')
const ROUNDS = 40

async function answerOf({ stdout }: ChildProcess): Promise<string> {
  if (stdout === null) throw new Error('no output')
  const [text] = await once(stdout, 'data')
  return String(text).trim()
}

describe('a new store', () => {
  test('is made by one of several copies that begin at once, and opened by all', async () => {
    const copies = Array.from({ length: 3 }, () =>
      spawn(process.execPath, [OPENER], { stdio: ['pipe', 'pipe', 'inherit'] }),
    )
    await Promise.all(copies.map(answerOf))
    for (let round = 0; round < ROUNDS; round += 1) {
      const line = JSON.stringify({ file: join(folder, `${round}.db`), at: Date.now() + 10 })
      for (const { stdin } of copies) stdin?.write(`${line}\n`)
      expect(await Promise.all(copies.map(answerOf))).toEqual(['ok', 'ok', 'ok'])
    }
    for (const copy of copies) copy.kill()
    expect(readdirSync(folder).filter((name) => name.includes('.new-'))).toEqual([])
  })

  test('leaves one that another copy has made meanwhile as it is', () => {
    const file = join(folder, 'there.db')
    const first = mustOpen(file)
    first.jobs.create({ ...FIRST, statement: { n: 1 } })
    makeStore(file, MIGRATIONS)
    expect(first.jobs.read('job-1')?.name).toBe(FIRST.name)
    first.close()
    expect(readdirSync(folder).filter((name) => name.startsWith('there'))).toEqual(['there.db'])
  })
})
