import { useEffect } from 'react'
import type { Command } from './commands.ts'
import { matches } from './keys.ts'

/** Inside a text entry undo and redo are the entry's own while its text is not committed, and Escape is the entry's. */
export function belongsToEntry(command: Command, typing: boolean): boolean {
  const entry = document.activeElement
  const inText = entry instanceof HTMLInputElement || entry instanceof HTMLTextAreaElement
  if (!inText) return false
  if (command.id === 'choose-nothing') return true
  return typing && (command.id === 'undo' || command.id === 'redo')
}

/**
 * Runs commands by their keys, wherever the focus is.
 * @param typing whether a text is being typed that is not yet a step
 */
export function useShortcuts(commands: readonly Command[], typing: boolean): void {
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent) {
      if (event.defaultPrevented || event.isComposing) return
      const command = commands.find((each) => each.keys.some((keys) => matches(event, keys)))
      if (!command || belongsToEntry(command, typing)) return
      if (command.id !== 'choose-nothing') event.preventDefault()
      if (command.enabled) command.run()
    }
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  }, [commands, typing])
}
