import { useEffect } from 'react'
import { fail, ok } from '../../core/units/index.ts'
import { desktop } from '../client/desktop-events.ts'
import type { Session } from '../state/session.ts'
import type { Command } from './commands.ts'
import { belongsToEntry } from './use-shortcuts.ts'

/** the menu is built anew when the commands have stayed for so long, ms */
const MENU_AFTER = 150

/**
 * On the desktop: its menu is made of the window's commands, job files opened outside arrive here, and the window closes
 * when what was typed last is saved. In a browser nothing of it.
 */
export function useDesktop(session: Session, commands: readonly Command[], typing: boolean): void {
  useEffect(() => {
    const shell = desktop()
    if (!shell) return
    const stops = [
      shell.on('file.opened', ({ name, text, trouble }) => {
        void session.takeJobFile(name, text === null ? fail(trouble) : ok(text))
      }),
      shell.on('window.closing', () => void session.allSaved().then(shell.mayClose)),
    ]
    return () => {
      for (const stop of stops) stop()
    }
  }, [session])

  useEffect(() => {
    const shell = desktop()
    if (!shell) return
    // a drag makes new commands at each of its steps: the menu is built once it rests
    const timer = setTimeout(
      () =>
        shell.showMenu(
          commands.map(({ id, label, group, keys, enabled }) => ({
            id,
            label,
            group,
            keys: keys[0] ?? '',
            enabled,
          })),
        ),
      MENU_AFTER,
    )
    return () => clearTimeout(timer)
  }, [commands])

  useEffect(() => {
    const shell = desktop()
    return shell?.on('menu.chosen', ({ id }) => {
      const command = commands.find((each) => each.id === id)
      if (!command?.enabled) return
      // the entry's own undo, which a menu can reach in no other way
      if (belongsToEntry(command, typing)) document.execCommand(id)
      else command.run()
    })
  }, [commands, typing])
}
