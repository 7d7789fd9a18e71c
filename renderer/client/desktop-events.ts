import type { DesktopEvents, MenuEntry } from '../../shared/contract/index.ts'

/** What the window asks of and hears from the desktop; there is none in a browser. */
export interface Desktop {
  showMenu(entries: readonly MenuEntry[]): void
  mayClose(): void
  on<E extends keyof DesktopEvents>(event: E, listener: (data: DesktopEvents[E]) => void): () => void
}

export function desktop(): Desktop | null {
  const bridge = window.kerfwright
  if (!bridge) return null
  return {
    showMenu: (entries) => bridge.showMenu(entries),
    mayClose: () => bridge.mayClose(),
    on: (event, listener) => bridge.on(event, listener as (data: unknown) => void),
  }
}
