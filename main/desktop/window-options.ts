import type { BrowserWindowConstructorOptions } from 'electron'

/** A window whose page can do what a page in a browser can, plus the two functions of the preload script. */
export function windowOptions(preload: string): BrowserWindowConstructorOptions {
  return {
    width: 1360,
    height: 880,
    minWidth: 480,
    minHeight: 400,
    title: 'Kerfwright',
    show: false,
    autoHideMenuBar: true,
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
