import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { ServiceError, type Services } from '../../../main/app/service-types.ts'
import { answerCall } from '../../../main/desktop/answer-call.ts'
import { closeGently } from '../../../main/desktop/close-gently.ts'
import { guardPage, type Page } from '../../../main/desktop/guard-page.ts'
import { menuTemplate, readMenu } from '../../../main/desktop/menu.ts'
import { filesNamed, openedFiles, readOpened } from '../../../main/desktop/opened-files.ts'
import { serveWindow } from '../../../main/desktop/serve-window.ts'
import { windowOptions } from '../../../main/desktop/window-options.ts'
import { keepPlace, readPlace } from '../../../main/desktop/window-place.ts'

const COMMANDS = [
  { id: 'save', label: 'Save now', group: 'Job', keys: 'Ctrl+S', enabled: true },
  { id: 'undo', label: 'Undo “posts & beams”', group: 'Edit', keys: 'Ctrl+Z', enabled: false },
  { id: 'choose-nothing', label: 'Choose nothing', group: 'Edit', keys: 'Escape', enabled: true },
  { id: 'settings', label: 'Settings…', group: 'Job', keys: 'Ctrl+,', enabled: true },
  { id: 'about', label: 'About Kerfwright', group: 'Help', keys: '', enabled: true },
  { id: 'go-site', label: 'Site', group: 'Work places', keys: 'Ctrl+Alt+1', enabled: true },
  { id: 'new', label: 'A command of a group nobody placed', group: 'Other', keys: '', enabled: true },
]

describe('the menu', () => {
  const chosen: string[] = []
  const menu = menuTemplate('linux', COMMANDS, (id) => chosen.push(id))
  const items = (label: string) => {
    const found = menu.find((each) => each.label === `&${label}`)?.submenu
    return Array.isArray(found) ? found : []
  }

  test('holds every command of the window once, and tells which one was chosen', () => {
    const named = menu.flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []))
    for (const { label } of COMMANDS)
      expect(named.filter((item) => item.label?.replaceAll('&&', '&') === label)).toHaveLength(1)
    const item = items('Go')[0]
    item?.click?.({} as never, undefined, {} as never)
    expect(chosen).toEqual(['go-site'])
    expect(items('File').map(({ label }) => label)).toContain('A command of a group nobody placed')
  })
  test('stands in the order of every program, each list with its access key', () => {
    expect(menu.map(({ label }) => label)).toEqual(['&File', '&Edit', '&View', '&Go', '&Window', '&Help'])
  })
  test('on a Mac tells of the program and its settings in the program’s own menu, and nowhere else', () => {
    const mac = menuTemplate('darwin', COMMANDS, () => {})
    const own = mac[0]?.submenu
    if (!Array.isArray(own)) throw new Error('the program has no menu')
    expect(mac[0]?.role).toBe('appMenu')
    expect(own.map(({ label, role, type }) => label ?? role ?? type)).toEqual([
      'About Kerfwright',
      'separator',
      'Settings…',
      'separator',
      'services',
      'separator',
      'hide',
      'hideOthers',
      'unhide',
      'separator',
      'quit',
    ])
    const others = mac.slice(1).flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []))
    expect(others.map(({ label }) => label)).not.toContain('Settings…')
  })
  test('shows keys that the window hears itself, so that a press runs a command once', () => {
    expect(items('Edit')[0]).toMatchObject({
      label: 'Undo “posts && beams”',
      enabled: false,
      accelerator: 'CmdOrCtrl+Z',
      registerAccelerator: false,
    })
    expect(items('Edit')[1]).not.toHaveProperty('accelerator')
  })
  test('starts and ends no list with a line, and opens none that is empty', () => {
    const empty = menuTemplate('darwin', [], () => {})
    expect(empty.map(({ label, role }) => label ?? role)).toEqual(['appMenu', 'Edit', 'View', 'windowMenu'])
    for (const each of [...menu, ...empty]) {
      if (!Array.isArray(each.submenu)) continue
      expect(each.submenu[0]?.type).not.toBe('separator')
      expect(each.submenu.at(-1)?.type).not.toBe('separator')
    }
  })
  test.each([
    ['no list', 'Save'],
    ['an entry with more in it', [{ ...COMMANDS[0], role: 'reload' }]],
    ['an endless list', Array.from({ length: 201 }, () => COMMANDS[0])],
    ['a label that is no text', [{ ...COMMANDS[0], label: { toString: 1 } }]],
  ])('%s is no menu', (_name, sent) => {
    expect(readMenu(sent)).toBeNull()
  })
})

describe('the place of the window', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'kerfwright-place-')), 'place.json')
  const screen = { x: 0, y: 0, width: 1920, height: 1080 }
  const place = { x: 100, y: 80, width: 1200, height: 800, maximized: true }

  test('is taken again where a screen still shows it', () => {
    keepPlace(file, place)
    expect(readPlace(file, [screen])).toEqual(place)
    expect(readPlace(file, [{ ...screen, x: 5000 }])).toBeNull()
    expect(readPlace(file, [])).toBeNull()
  })
  test.each(['', '{', '[]', '{"x":1}', '{"x":1e9,"y":0,"width":9,"height":9,"maximized":false}'])(
    'is forgotten where the file holds %s',
    (text) => {
      writeFileSync(file, text)
      expect(readPlace(file, [screen])).toBeNull()
    },
  )
  test('no file is no fault', () => {
    expect(readPlace(join(tmpdir(), 'no such folder', 'place.json'), [screen])).toBeNull()
  })
})

describe('a job file opened outside', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kerfwright-opened-'))
  const path = join(folder, 'Deck.kerfwright')
  writeFileSync(path, '{ "version": 1 }')

  test('is found among the words of a command line, options aside', () => {
    expect(filesNamed(['--store', '/s', path, 'notes.txt', '--x.kerfwright'])).toEqual([path])
  })
  test('waits until the window listens, and again while it is shut', () => {
    const told: string[] = []
    const files = openedFiles(({ name }) => told.push(name))
    files.open(path)
    expect(told).toEqual([])
    files.listening()
    files.listening()
    expect(told).toEqual(['Deck.kerfwright'])
    files.notListening()
    files.open(path)
    expect(told).toHaveLength(1)
    files.listening()
    expect(told).toHaveLength(2)
  })
  test('that cannot be read comes as a sentence', () => {
    expect(readOpened(join(folder, 'gone.kerfwright'))).toMatchObject({
      name: 'gone.kerfwright',
      text: null,
      trouble: expect.stringContaining('there is no such file'),
    })
    const large = join(folder, 'large.kerfwright')
    writeFileSync(large, ' '.repeat(1_000_001))
    expect(readOpened(large).trouble).toContain('too large')
  })
})

describe('a closing window', () => {
  const held = () => {
    let listener: (event: { preventDefault(): void }) => void = () => {}
    const state = { destroyed: 0, asked: 0, prevented: 0 }
    const close = closeGently(
      {
        on: (_event, each) => {
          listener = each
        },
        destroy: () => state.destroyed++,
      },
      { ask: () => state.asked++, wait: 20 },
    )
    return { state, close, press: () => listener({ preventDefault: () => state.prevented++ }) }
  }
  test('goes when its page has saved, and not before', () => {
    const { state, close, press } = held()
    close()
    expect(state.destroyed).toBe(0)
    press()
    press()
    expect(state).toEqual({ destroyed: 0, asked: 1, prevented: 2 })
    close()
    expect(state.destroyed).toBe(1)
  })
  test('goes without an answer of its page after a while', async () => {
    const { state, press } = held()
    press()
    await vi.waitFor(() => expect(state.destroyed).toBe(1))
  })
})

describe('the window', () => {
  test('is sandboxed and isolated from Node', () => {
    expect(windowOptions('/p.cjs', null).webPreferences).toMatchObject({
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
      JSON.stringify(
        ['linux', 'darwin', 'win32'].map((name) => menuTemplate(name as NodeJS.Platform, COMMANDS, () => {})),
      ),
    ).not.toMatch(/reload|toggleDevTools/i)
  })
})

describe('a guarded page', () => {
  const listeners = new Map<string, (event: { preventDefault(): void }, url: string) => void>()
  let permission: ((page: unknown, name: string, answer: (granted: boolean) => void) => void) | undefined
  let check: (() => boolean) | undefined
  let download: Parameters<Page['session']['on']>[1] | undefined
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
      on: (_event, listener) => {
        download = listener
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

  test.each([
    ['blob:kerfwright://window/1b2c', 0],
    ['blob:https://example.com/1b2c', 1],
    ['https://example.com/a.exe', 1],
    ['file:///etc/passwd', 1],
  ])('that saves %s is stopped %i times', (url, times) => {
    let stops = 0
    download?.({ preventDefault: () => stops++ }, { getURL: () => url })
    expect(stops).toBe(times)
  })

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
