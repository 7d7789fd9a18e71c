import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test, vi } from 'vitest'
import type { Reply } from '../../../shared/contract/index.ts'

type Handler = (event: unknown, method: unknown, input: unknown) => Promise<Reply>

/** Electron as far as the desktop's door uses it; what it was told is kept for the test. */
const told = vi.hoisted(() => ({
  calls: new Map<string, Handler>(),
  schemes: [] as string[],
  loaded: [] as string[],
  listeners: new Map<string, (event: { preventDefault(): void }) => void>(),
  exits: [] as number[],
  errors: [] as string[],
}))

vi.mock('electron', () => ({
  app: {
    setPath: () => {},
    whenReady: async () => {},
    requestSingleInstanceLock: () => true,
    on: (event: string, listener: (event: { preventDefault(): void }) => void) =>
      told.listeners.set(event, listener),
    quit: () => {},
    exit: (code: number) => told.exits.push(code),
  },
  BrowserWindow: class {
    webContents = {
      on: () => {},
      setWindowOpenHandler: () => {},
      send: () => {},
      session: { setPermissionRequestHandler: () => {}, setPermissionCheckHandler: () => {} },
    }
    once() {}
    on() {}
    async loadURL(url: string) {
      told.loaded.push(url)
    }
  },
  dialog: { showErrorBox: (_title: string, text: string) => told.errors.push(text) },
  ipcMain: { handle: (channel: string, handler: Handler) => told.calls.set(channel, handler) },
  Menu: { setApplicationMenu: () => {}, buildFromTemplate: () => ({}) },
  protocol: {
    registerSchemesAsPrivileged: () => {},
    handle: (name: string) => told.schemes.push(name),
  },
}))

test('the desktop opens one window on the program, answers it, and closes the store when it goes', async () => {
  process.argv.push('--store', mkdtempSync(join(tmpdir(), 'kerfwright-desktop-store-')))
  await import('../../../main/desktop/index.ts')
  await vi.waitFor(() => expect([told.errors, told.loaded]).toEqual([[], ['kerfwright://window/']]), {
    timeout: 10_000,
  })
  expect(told.schemes).toEqual(['kerfwright'])

  const call = told.calls.get('kerfwright:call')
  const own = { senderFrame: { url: 'kerfwright://window/', parent: null } }
  expect(await call?.(own, 'app.info', {})).toMatchObject({ ok: true, result: { door: 'desktop' } })
  expect(await call?.(own, 'no.such', {})).toMatchObject({ ok: false, code: 'unknown-method' })

  let held = 0
  told.listeners.get('will-quit')?.({ preventDefault: () => held++ })
  await vi.waitFor(() => expect(told.exits).toEqual([0]))
  expect(held).toBe(1)
  expect(await call?.(own, 'app.info', {})).toMatchObject({ ok: false, code: 'stopped' })
})
