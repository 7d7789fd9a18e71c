import { isOwnPage } from './address.ts'

interface Stoppable {
  preventDefault(): void
}

/** The parts of Electron's `webContents` and `session` that are shut here. */
export interface Page {
  on(event: 'will-navigate' | 'will-redirect', listener: (event: Stoppable, url: string) => void): unknown
  on(event: 'will-attach-webview', listener: (event: Stoppable) => void): unknown
  setWindowOpenHandler(handler: () => { action: 'deny' }): unknown
  readonly session: {
    setPermissionRequestHandler(
      handler: (page: unknown, permission: string, answer: (granted: boolean) => void) => void,
    ): unknown
    setPermissionCheckHandler(handler: () => boolean): unknown
  }
}

/** The page stays where it is, opens nothing, holds no other page, and gets no permission it would have to ask for. */
export function guardPage(page: Page): void {
  const stay = (event: Stoppable, url: string) => {
    if (!isOwnPage(url)) event.preventDefault()
  }
  page.on('will-navigate', stay)
  page.on('will-redirect', stay)
  page.on('will-attach-webview', (event) => event.preventDefault())
  page.setWindowOpenHandler(() => ({ action: 'deny' }))
  page.session.setPermissionRequestHandler((_page, _permission, answer) => answer(false))
  page.session.setPermissionCheckHandler(() => false)
}
