import type { BrowserWindowConstructorOptions } from 'electron'
import type { Place } from './window-place.ts'

/** A window whose page can do what a page in a browser can, plus the two functions of the preload script. */
export function windowOptions(preload: string, place: Place | null): BrowserWindowConstructorOptions {
  return {
    ...(place ? { x: place.x, y: place.y } : {}),
    width: place?.width ?? 1360,
    height: place?.height ?? 880,
    minWidth: 480,
    minHeight: 400,
    title: 'Kerfwright',
    show: false,
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  }
}
