import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test, vi } from 'vitest'
import type { Reply } from '../../../shared/contract/index.ts'

type Handler = (event: unknown, method: unknown, input: unknown) => Promise<Reply>
type Item = { readonly label?: string; readonly submenu?: readonly Item[]; click?(): void }

/** Electron as far as the desktop's door uses it; what it was told is kept for the test. */
const told = vi.hoisted(() => ({
  calls: new Map<string, Handler>(),
  messages: new Map<string, (event: unknown, sent: unknown) => void>(),
  toPage: [] as unknown[],
  menus: [] as (readonly Item[])[],
  closers: [] as ((event: { preventDefault(): void }) => void)[],
  destroyed: 0,
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
      send: (_channel: string, event: string, data: unknown) => told.toPage.push([event, data]),
      session: { setPermissionRequestHandler: () => {}, setPermissionCheckHandler: () => {}, on: () => {} },
    }
    once() {}
    on(event: string, listener: (event: { preventDefault(): void }) => void) {
      if (event === 'close') told.closers.push(listener)
    }
    getNormalBounds() {
      return { x: 10, y: 20, width: 1000, height: 700 }
    }
    isMaximized() {
      return false
    }
    destroy() {
      told.destroyed++
    }
    async loadURL(url: string) {
      told.loaded.push(url)
    }
  },
  dialog: { showErrorBox: (_title: string, text: string) => told.errors.push(text) },
  ipcMain: {
    handle: (channel: string, handler: Handler) => told.calls.set(channel, handler),
    on: (channel: string, listener: (event: unknown, sent: unknown) => void) =>
      told.messages.set(channel, listener),
  },
  Menu: {
    setApplicationMenu: (menu: readonly Item[]) => told.menus.push(menu),
    buildFromTemplate: (menu: readonly Item[]) => menu,
  },
  screen: { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }] },
  protocol: {
    registerSchemesAsPrivileged: () => {},
    handle: (name: string) => told.schemes.push(name),
  },
}))

test('the desktop opens one window on the program, answers it, and closes the store when it goes', async () => {
  const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-desktop-store-'))
  const file = join(storeFolder, 'Porch.kerfwright')
  writeFileSync(file, '{}')
  process.argv.push('--store', storeFolder, file)
  await import('../../../main/desktop/index.ts')
  await vi.waitFor(() => expect([told.errors, told.loaded]).toEqual([[], ['kerfwright://window/']]), {
    timeout: 10_000,
  })
  expect(told.schemes).toEqual(['kerfwright'])

  const call = told.calls.get('kerfwright:call')
  const own = { senderFrame: { url: 'kerfwright://window/', parent: null } }
  expect(await call?.(own, 'app.info', {})).toMatchObject({ ok: true, result: { door: 'desktop' } })
  expect(await call?.(own, 'no.such', {})).toMatchObject({ ok: false, code: 'unknown-method' })

  const entry = { id: 'save', label: 'Save now', group: 'Job', keys: 'Ctrl+S', enabled: true }
  const menus = told.menus.length
  told.messages.get('kerfwright:menu')?.({ senderFrame: { url: 'https://example.com/', parent: null } }, [
    entry,
  ])
  expect(told.menus).toHaveLength(menus)
  told.messages.get('kerfwright:menu')?.(own, [entry])
  expect(told.toPage).toContainEqual(['file.opened', { name: 'Porch.kerfwright', text: '{}', trouble: '' }])
  told.menus
    .at(-1)
    ?.flatMap(({ submenu = [] }) => submenu)
    .find(({ label }) => label === 'Save now')
    ?.click?.()
  expect(told.toPage).toContainEqual(['menu.chosen', { id: 'save' }])

  for (const closer of told.closers) closer({ preventDefault: () => {} })
  expect(told.toPage).toContainEqual(['window.closing', {}])
  expect(told.destroyed).toBe(0)
  told.messages.get('kerfwright:may-close')?.(own, undefined)
  expect(told.destroyed).toBe(1)
  expect(readFileSync(join(storeFolder, 'window-place.json'), 'utf8')).toContain('"width":1000')

  let held = 0
  told.listeners.get('will-quit')?.({ preventDefault: () => held++ })
  await vi.waitFor(() => expect(told.exits).toEqual([0]))
  expect(held).toBe(1)
  expect(await call?.(own, 'app.info', {})).toMatchObject({ ok: false, code: 'stopped' })
})
