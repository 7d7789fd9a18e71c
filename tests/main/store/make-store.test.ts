import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { APPLICATION_ID, readHeader } from '../../../main/store/header.ts'
import { makeStore } from '../../../main/store/make-store.ts'
import { latestVersion } from '../../../main/store/migrate.ts'
import { MIGRATIONS } from '../../../main/store/migrations.ts'
import { FIRST, mustOpen, temporaryFolder } from './temporary-store.ts'

const folder = temporaryFolder()
const OPENER = join(import.meta.dirname, 'opener.ts')

async function answerOf({ stdout }: ChildProcess): Promise<string> {
  if (stdout === null) throw new Error('no output')
  const [text] = await once(stdout, 'data')
  return String(text).trim()
}

function startCopies(count: number): readonly ChildProcess[] {
  return Array.from({ length: count }, () =>
    spawn(process.execPath, [OPENER], { stdio: ['pipe', 'pipe', 'inherit'] }),
  )
}

function open(copies: readonly ChildProcess[], file: string): void {
  for (const { stdin } of copies) stdin?.write(`${JSON.stringify({ file, at: Date.now() + 10 })}\n`)
}

describe('a new store', () => {
  test('is whole from the moment it is there, so that no other copy meets it half made', async () => {
    const copies = startCopies(1)
    await Promise.all(copies.map(answerOf))
    for (let round = 0; round < 5; round += 1) {
      const file = join(folder, `whole-${round}.db`)
      open(copies, file)
      let header = readHeader(file)
      while (header.kind === 'absent') header = readHeader(file)
      expect(header).toMatchObject({
        kind: 'sqlite',
        applicationId: APPLICATION_ID,
        userVersion: latestVersion(MIGRATIONS),
      })
      expect(await Promise.all(copies.map(answerOf))).toEqual(['ok'])
    }
    for (const copy of copies) copy.kill()
  })

  test('is made by one of several copies that begin at once, and opened by all', async () => {
    const copies = startCopies(3)
    await Promise.all(copies.map(answerOf))
    for (let round = 0; round < 5; round += 1) {
      open(copies, join(folder, `${round}.db`))
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
