import { BrowserWindow, screen } from 'electron'
import type { DesktopEvents } from '../../shared/contract/index.ts'
import { address } from './address.ts'
import { eventChannel } from './channels.ts'
import { closeGently } from './close-gently.ts'
import { guardPage } from './guard-page.ts'
import { windowOptions } from './window-options.ts'
import { keepPlace, readPlace } from './window-place.ts'

/** The program's one window. */
export interface ProgramWindow {
  readonly window: BrowserWindow
  tell<E extends keyof DesktopEvents>(event: E, data: DesktopEvents[E]): void
  /** the page has nothing unsaved any more */
  mayClose(): void
}

/**
 * Opens the window where it stood when it was closed, if a screen still shows that place.
 * @param placeFile keeps the place
 */
export function openWindow(files: { readonly preload: string; readonly placeFile: string }): ProgramWindow {
  const screens = screen.getAllDisplays().map(({ workArea }) => workArea)
  const place = readPlace(files.placeFile, screens)
  const window = new BrowserWindow(windowOptions(files.preload, place))
  const tell: ProgramWindow['tell'] = (event, data) => window.webContents.send(eventChannel, event, data)
  guardPage(window.webContents)
  window.once('ready-to-show', () => {
    if (place?.maximized) window.maximize()
    window.show()
  })
  window.on('close', () =>
    keepPlace(files.placeFile, { ...window.getNormalBounds(), maximized: window.isMaximized() }),
  )
  const mayClose = closeGently(window, { ask: () => tell('window.closing', {}) })
  void window.loadURL(address)
  return { window, tell, mayClose }
}
