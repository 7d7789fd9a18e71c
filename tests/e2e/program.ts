import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test as base } from '@playwright/test'
import { type Program, startProgram } from './start-program.ts'

/** Playwright's `test` with a program of its own for each test. */
export const test = base.extend<{ program: Program }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of the fixtures it needs from here.
  program: async ({}, use) => {
    const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-e2e-'))
    const program = await startProgram(storeFolder)
    await use(program)
    await program.stop()
    rmSync(storeFolder, { recursive: true, force: true })
  },
})

export { expect } from '@playwright/test'
