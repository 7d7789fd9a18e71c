/**
 * A call's outcome where it crosses between processes as plain data: an error object would lose everything but its
 * message on the way.
 */
export type Reply =
  | { readonly ok: true; readonly result: unknown }
  | { readonly ok: false; readonly code: string; readonly message: string }

/** A command of the window as the desktop's menu shows it. */
export interface MenuEntry {
  readonly id: string
  readonly label: string
  readonly group: string
  /** keys as written, `Ctrl` standing for the command key on a Mac; '' for none. The window itself hears them. */
  readonly keys: string
  readonly enabled: boolean
}

/** What happens on the desktop, told to the window under these names. */
export interface DesktopEvents {
  /** an entry of the menu was chosen */
  'menu.chosen': { readonly id: string }
  /** a job file was opened from outside the window; a sentence instead of a text where it could not be read */
  'file.opened': { readonly name: string; readonly text: string | null; readonly trouble: string }
  /** the window is about to close: what is unsaved is to be saved, then `mayClose` said */
  'window.closing': Record<string, never>
}

/** What the desktop's preload script gives the window, and nothing more. */
export interface Bridge {
  call(method: string, input: unknown): Promise<Reply>
  on(event: string, listener: (data: unknown) => void): () => void
  /** the menu, made from the window's own commands; the first time it also says that the window listens */
  showMenu(entries: readonly MenuEntry[]): void
  /** nothing is unsaved any more */
  mayClose(): void
}
