import { type ChildProcess, fork } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { test as base } from '@playwright/test'
import type { FromSharedHost, ToSharedHost } from './shared-host.ts'
import { type Program, startProgram } from './start-program.ts'

interface SharedHost {
  open(storeFolder: string): Promise<string>
  close(storeFolder: string): Promise<void>
}

/** Playwright's `test` with a store of its own for each test; the host that serves it goes on from test to test. */
export const test = base.extend<
  { program: Pick<Program, 'link' | 'storeFolder'> },
  { sharedHost: SharedHost }
>({
  sharedHost: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of the fixtures it needs from here.
    async ({}, use) => {
      const child = fork(resolve(import.meta.dirname, 'shared-host.ts'), { stdio: 'inherit' })
      await use(asked(child))
      child.disconnect()
    },
    { scope: 'worker' },
  ],
  program: async ({ sharedHost }, use) => {
    await onStore(async (storeFolder) => {
      await use({ link: await sharedHost.open(storeFolder), storeFolder })
      await sharedHost.close(storeFolder)
    })
  },
})

/** The same with a built program started for each test, which it may kill and start again. */
export const testAlone = base.extend<{ program: Program }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of the fixtures it needs from here.
  program: async ({}, use) => {
    await onStore(async (storeFolder) => {
      const program = await startProgram(storeFolder)
      await use(program)
      await program.stop()
    })
  },
})

export { expect } from '@playwright/test'

async function onStore(run: (storeFolder: string) => Promise<void>): Promise<void> {
  const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-e2e-'))
  await run(storeFolder)
  rmSync(storeFolder, { recursive: true, force: true })
}

function asked(child: ChildProcess): SharedHost {
  let last = 0
  const ask = (what: Omit<ToSharedHost, 'id'>) =>
    new Promise<FromSharedHost>((done, failed) => {
      last += 1
      const id = last
      const gone = () => failed(new Error('The host of the tests ended.'))
      const hear = (said: FromSharedHost) => {
        if (said.id !== id) return
        child.off('message', hear)
        child.off('exit', gone)
        if (said.fault === undefined) done(said)
        else failed(new Error(said.fault))
      }
      child.on('message', hear)
      child.once('exit', gone)
      child.send({ id, ...what } satisfies ToSharedHost)
    })
  return {
    open: async (storeFolder) => (await ask({ open: storeFolder })).link ?? '',
    close: async (storeFolder) => {
      await ask({ close: storeFolder })
    },
  }
}
