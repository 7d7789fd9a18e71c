import { isOwnPage, origin } from './address.ts'

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
    on(event: 'will-download', listener: (event: Stoppable, item: { getURL(): string }) => void): unknown
  }
}

/**
 * The page stays where it is, opens nothing, holds no other page, gets no permission it would have to ask for, and saves
 * nothing but what it made itself; where to, the system asks its user.
 */
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
  page.session.on('will-download', (event, item) => {
    if (!item.getURL().startsWith(`blob:${origin}/`)) event.preventDefault()
  })
}
