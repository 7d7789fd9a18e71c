import { join, resolve } from 'node:path'
import { app, dialog, type IpcMainEvent, ipcMain, Menu, protocol } from 'electron'
import manifest from '../../package.json' with { type: 'json' }
import { defaultStoreFolder } from '../app/default-store-folder.ts'
import { placesFrom } from '../app/places.ts'
import { ServiceError, type Services } from '../app/service-types.ts'
import { createServices } from '../app/services.ts'
import { keepMemorySteady } from '../app/steady-memory.ts'
import { createLog } from '../log/index.ts'
import { scheme } from './address.ts'
import { answerCall, isOwnCaller } from './answer-call.ts'
import { callChannel, eventChannel, mayCloseChannel, menuChannel } from './channels.ts'
import { menuTemplate, readMenu } from './menu.ts'
import { openWindow, type ProgramWindow } from './open-window.ts'
import { filesNamed, openedFiles } from './opened-files.ts'
import { serveWindow } from './serve-window.ts'

const { workerPath, paperWorkerPath, windowFolder } = placesFrom(import.meta.filename)
const named = process.argv.indexOf('--store')
const storeFolder = resolve((named > 0 ? process.argv[named + 1] : undefined) ?? defaultStoreFolder())
const log = createLog(storeFolder)

let services: Services | null = null
let shown: ProgramWindow | null = null
const files = openedFiles((opened) => shown?.tell('file.opened', opened))

// Electron's caches stay out of the store's own files.
app.setPath('userData', join(storeFolder, 'window'))
protocol.registerSchemesAsPrivileged([
  { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
])

function showWindow(): void {
  shown = openWindow({
    preload: join(import.meta.dirname, '../preload/preload.cjs'),
    placeFile: join(storeFolder, 'window-place.json'),
  })
  shown.window.on('closed', () => {
    shown = null
    files.notListening()
  })
}

function raise(): void {
  if (!shown) return
  if (shown.window.isMinimized()) shown.window.restore()
  shown.window.focus()
}

function showMenu(commands: NonNullable<ReturnType<typeof readMenu>>): void {
  const choose = (id: string) => shown?.tell('menu.chosen', { id })
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, commands, choose)))
}

async function start(): Promise<void> {
  keepMemorySteady()
  await app.whenReady()
  const running = await createServices({
    storeFolder,
    workerPath,
    paperWorkerPath,
    door: 'desktop',
    version: manifest.version,
    emit: (event, data) => shown?.window.webContents.send(eventChannel, event, data),
    trouble: (sentence) => log.error('trouble', { sentence }),
  })
  services = running
  protocol.handle(scheme, (request) => serveWindow(windowFolder, request))
  ipcMain.handle(callChannel, (event, method: unknown, input: unknown) =>
    answerCall(event, method, input, running, log),
  )
  ipcMain.on(menuChannel, (event: IpcMainEvent, sent: unknown) => {
    const commands = isOwnCaller(event) ? readMenu(sent) : null
    if (!commands) return
    showMenu(commands)
    files.listening()
  })
  ipcMain.on(mayCloseChannel, (event: IpcMainEvent) => {
    if (isOwnCaller(event)) shown?.mayClose()
  })
  showMenu([])
  showWindow()
}

function fail(fault: unknown): void {
  log.error('start failed', { fault })
  const sentence =
    fault instanceof ServiceError ? fault.message : 'The program could not start; its log says why.'
  dialog.showErrorBox('Kerfwright', sentence)
  app.exit(1)
}

if (app.requestSingleInstanceLock()) {
  app.on('second-instance', (_event, args) => {
    raise()
    for (const path of filesNamed(args.slice(1))) files.open(path)
  })
  app.on('open-file', (event, path) => {
    event.preventDefault()
    files.open(path)
  })
  app.on('activate', () => {
    if (services && !shown) showWindow()
  })
  app.on('window-all-closed', () => app.quit())
  app.on('will-quit', (event) => {
    if (!services) return
    event.preventDefault()
    const closing = services
    services = null
    void closing.close().finally(() => app.exit(0))
  })
  for (const path of filesNamed(process.argv.slice(1))) files.open(path)
  start().catch(fail)
} else {
  app.quit()
}
