import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { ServiceError, type Services } from '../../../main/app/service-types.ts'
import { answerCall } from '../../../main/desktop/answer-call.ts'
import { guardPage, type Page } from '../../../main/desktop/guard-page.ts'
import { menuTemplate } from '../../../main/desktop/menu.ts'
import { serveWindow } from '../../../main/desktop/serve-window.ts'
import { windowOptions } from '../../../main/desktop/window-options.ts'

describe('the window', () => {
  test('is sandboxed and isolated from Node', () => {
    expect(windowOptions('/p.cjs').webPreferences).toMatchObject({
      preload: '/p.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
    })
  })
  test('has no menu entry that reloads the page or opens its inner tools', () => {
    expect(
      JSON.stringify(['linux', 'darwin', 'win32'].map((name) => menuTemplate(name as NodeJS.Platform))),
    ).not.toMatch(/reload|toggleDevTools/i)
  })
})

describe('a guarded page', () => {
  const listeners = new Map<string, (event: { preventDefault(): void }, url: string) => void>()
  let permission: ((page: unknown, name: string, answer: (granted: boolean) => void) => void) | undefined
  let check: (() => boolean) | undefined
  let opened: (() => { action: string }) | undefined
  const page: Page = {
    on: (event: string, listener: (event: { preventDefault(): void }, url: string) => void) =>
      listeners.set(event, listener),
    setWindowOpenHandler: (handler) => {
      opened = handler
    },
    session: {
      setPermissionRequestHandler: (handler) => {
        permission = handler
      },
      setPermissionCheckHandler: (handler) => {
        check = handler
      },
    },
  }
  guardPage(page)
  const stopped = (event: string, url: string) => {
    let stops = 0
    listeners.get(event)?.({ preventDefault: () => stops++ }, url)
    return stops === 1
  }

  test.each([
    ['will-navigate', 'https://example.com/'],
    ['will-navigate', 'file:///etc/passwd'],
    ['will-navigate', 'kerfwright://elsewhere/'],
    ['will-navigate', 'kerfwright://window.example/'],
    ['will-redirect', 'https://example.com/'],
    ['will-attach-webview', 'kerfwright://window/'],
  ])('does not follow %s to %s', (event, url) => expect(stopped(event, url)).toBe(true))

  test('may load itself again', () => expect(stopped('will-navigate', 'kerfwright://window/')).toBe(false))

  test('opens nothing and is granted nothing', () => {
    const answers: boolean[] = []
    for (const name of ['geolocation', 'media', 'notifications', 'openExternal'])
      permission?.(null, name, (granted) => answers.push(granted))
    expect([opened?.().action, check?.(), answers]).toEqual(['deny', false, [false, false, false, false]])
  })
})

describe('a call over the bridge', () => {
  const errors: string[] = []
  const log = { info: () => {}, error: (event: string) => void errors.push(event) }
  const services: Services = {
    async call(method, input) {
      if (method === 'echo') return input
      if (method === 'conflict') throw new ServiceError('conflict', 'Changed elsewhere.')
      throw new Error('secret detail')
    },
    async close() {},
  }
  const own = { senderFrame: { url: 'kerfwright://window/index.html', parent: null } }

  test('brings the answer back', async () => {
    expect(await answerCall(own, 'echo', { a: 1 }, services, log)).toEqual({ ok: true, result: { a: 1 } })
  })
  test('brings a refusal back with its code', async () => {
    expect(await answerCall(own, 'conflict', {}, services, log)).toEqual({
      ok: false,
      code: 'conflict',
      message: 'Changed elsewhere.',
    })
  })
  test('keeps the details of a crash in the log', async () => {
    const reply = await answerCall(own, 'crash', {}, services, log)
    expect(reply).toMatchObject({ ok: false, code: 'internal' })
    expect(JSON.stringify(reply)).not.toContain('secret detail')
    expect(errors).toEqual(['method failed'])
  })
  test.each([
    [null],
    [{ url: 'https://example.com/', parent: null }],
    [{ url: 'kerfwright://window.example/', parent: null }],
    [{ url: 'kerfwright://window/', parent: {} }],
  ])('from the frame %j is refused', async (senderFrame) => {
    expect(await answerCall({ senderFrame }, 'echo', {}, services, log)).toMatchObject({
      ok: false,
      code: 'bad-input',
    })
  })
  test('that names no method is refused', async () => {
    expect(await answerCall(own, { toString: () => 'echo' }, {}, services, log)).toMatchObject({ ok: false })
  })
})

describe('the window’s own scheme', () => {
  const outside = mkdtempSync(join(tmpdir(), 'kerfwright-desktop-'))
  const folder = join(outside, 'window')
  mkdirSync(folder)
  writeFileSync(join(folder, 'index.html'), 'window')
  writeFileSync(join(outside, 'secret.txt'), 'secret')

  test('serves the page with the content security policy', async () => {
    const answer = await serveWindow(folder, new Request('kerfwright://window/'))
    expect([answer.status, await answer.text()]).toEqual([200, 'window'])
    expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'")
  })
  test.each([
    'kerfwright://elsewhere/',
    'kerfwright://window/..%2fsecret.txt',
    'kerfwright://window/nowhere.js',
  ])('has nothing at %s', async (url) =>
    expect((await serveWindow(folder, new Request(url))).status).toBe(404),
  )
})
