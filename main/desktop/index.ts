import { join, resolve } from 'node:path'
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol } from 'electron'
import manifest from '../../package.json' with { type: 'json' }
import { defaultStoreFolder } from '../app/default-store-folder.ts'
import { placesFrom } from '../app/places.ts'
import { ServiceError, type Services } from '../app/service-types.ts'
import { createServices } from '../app/services.ts'
import { createLog } from '../log/index.ts'
import { address, scheme } from './address.ts'
import { answerCall } from './answer-call.ts'
import { callChannel, eventChannel } from './channels.ts'
import { guardPage } from './guard-page.ts'
import { menuTemplate } from './menu.ts'
import { serveWindow } from './serve-window.ts'
import { windowOptions } from './window-options.ts'

const { workerPath, windowFolder } = placesFrom(import.meta.filename)
const named = process.argv.indexOf('--store')
const storeFolder = resolve((named > 0 ? process.argv[named + 1] : undefined) ?? defaultStoreFolder())
const log = createLog(storeFolder)

let services: Services | null = null
let window: BrowserWindow | null = null

// Electron's caches stay out of the store's own files.
app.setPath('userData', join(storeFolder, 'window'))
protocol.registerSchemesAsPrivileged([
  { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
])

function openWindow(): void {
  window = new BrowserWindow(windowOptions(join(import.meta.dirname, '../preload/preload.cjs')))
  guardPage(window.webContents)
  window.once('ready-to-show', () => window?.show())
  window.on('closed', () => {
    window = null
  })
  void window.loadURL(address)
}

async function start(): Promise<void> {
  await app.whenReady()
  const running = await createServices({
    storeFolder,
    workerPath,
    door: 'desktop',
    version: manifest.version,
    emit: (event, data) => window?.webContents.send(eventChannel, event, data),
    trouble: (sentence) => log.error('trouble', { sentence }),
  })
  services = running
  protocol.handle(scheme, (request) => serveWindow(windowFolder, request))
  ipcMain.handle(callChannel, (event, method: unknown, input: unknown) =>
    answerCall(event, method, input, running, log),
  )
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform)))
  openWindow()
}

function fail(fault: unknown): void {
  log.error('start failed', { fault })
  const sentence =
    fault instanceof ServiceError ? fault.message : 'The program could not start; its log says why.'
  dialog.showErrorBox('Kerfwright', sentence)
  app.exit(1)
}

if (app.requestSingleInstanceLock()) {
  app.on('second-instance', () => {
    if (window?.isMinimized()) window.restore()
    window?.focus()
  })
  app.on('activate', () => {
    if (services && !window) openWindow()
  })
  app.on('window-all-closed', () => app.quit())
  app.on('will-quit', (event) => {
    if (!services) return
    event.preventDefault()
    const closing = services
    services = null
    void closing.close().finally(() => app.exit(0))
  })
  start().catch(fail)
} else {
  app.quit()
}
