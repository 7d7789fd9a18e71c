/** The parts of a keyboard event that decide which shortcut it is. */
export interface KeyPress {
  readonly key: string
  readonly code: string
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly altKey: boolean
  readonly shiftKey: boolean
}

/** Whether a press is the shortcut written as `Ctrl+Shift+Z`; the command key of a Mac counts as Ctrl. */
export function matches(press: KeyPress, written: string): boolean {
  const parts = written.split('+')
  const key = parts.at(-1) ?? ''
  const wants = (name: string) => parts.slice(0, -1).includes(name)
  if ((press.ctrlKey || press.metaKey) !== wants('Ctrl') || press.altKey !== wants('Alt')) return false
  if (key !== '/' && press.shiftKey !== wants('Shift')) return false
  if (/^\d$/.test(key)) return press.code === `Digit${key}` || press.key === key
  return press.key.toLowerCase() === key.toLowerCase() || (/^[A-Z]$/.test(key) && press.code === `Key${key}`)
}

/** A shortcut as this system writes it. */
export function shown(written: string, mac: boolean): string {
  return mac
    ? written.replace('Ctrl', '⌘').replace('Alt', '⌥').replace('Shift', '⇧').replaceAll('+', ' ')
    : written.replaceAll('+', ' ')
}
