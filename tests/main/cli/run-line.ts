import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'
import { run } from '../../../main/cli/run.ts'

export interface Told {
  readonly code: number
  readonly said: string
  readonly warned: string
}

/** Runs a command line in this process and keeps what it says. */
export async function runLine(...words: string[]): Promise<Told> {
  let said = ''
  let warned = ''
  const code = await run(words, '9.9.9', {
    say: (text) => {
      said += text
    },
    warn: (text) => {
      warned += text
    },
  })
  return { code, said, warned }
}

/** A folder of its own for a test file; `write` puts a file there and answers its path. */
export function scratch() {
  const folder = mkdtempSync(join(tmpdir(), 'kerfwright-cli-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return {
    folder,
    at: (name: string) => join(folder, name),
    write: (name: string, content: string | object) => {
      const path = join(folder, name)
      writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content, null, 2))
      return path
    },
  }
}
