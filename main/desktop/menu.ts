import type { MenuItemConstructorOptions } from 'electron'
import { z } from 'zod'
import type { MenuEntry } from '../../shared/contract/index.ts'

type Item = MenuItemConstructorOptions

const entries = z
  .array(
    z.strictObject({
      id: z.string().min(1).max(100),
      label: z.string().min(1).max(300),
      group: z.string().max(100),
      keys: z.string().max(40),
      enabled: z.boolean(),
    }),
  )
  .max(200)

/** The window's commands as they arrived, or null where they are no such list. */
export function readMenu(sent: unknown): readonly MenuEntry[] | null {
  const read = entries.safeParse(sent)
  return read.success ? read.data : null
}

/** Where the window's groups of commands stand; a group that is not named here stands under Job. */
const MENUS = [
  { label: 'Job', groups: ['Job', 'Papers'] },
  { label: 'Edit', groups: ['Edit'] },
  { label: 'View', groups: ['View', 'Drawing'] },
  { label: 'Go', groups: ['Work places'] },
] as const

const PLACED: ReadonlySet<string> = new Set(MENUS.flatMap(({ groups }) => groups))

/**
 * The desktop's menu: the window's own commands, and what the system does for every program.
 * @param commands as the window sent them; none until it has
 */
export function menuTemplate(
  platform: NodeJS.Platform,
  commands: readonly MenuEntry[],
  choose: (id: string) => void,
): Item[] {
  const mac = platform === 'darwin'
  const own = (groups: readonly string[]): Item[] =>
    groups.flatMap((group) => {
      const found = commands.filter(
        (entry) => entry.group === group || (group === 'Job' && !PLACED.has(entry.group)),
      )
      return found.length === 0 ? [] : [{ type: 'separator' }, ...found.map((entry) => itemOf(entry, choose))]
    })
  const system: { readonly [menu in (typeof MENUS)[number]['label']]: Item[] } = {
    Job: mac ? [] : [{ role: 'quit' }],
    Edit: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }],
    View: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, { role: 'togglefullscreen' }],
    Go: [],
  }
  const menus = MENUS.map(({ label, groups }): Item => {
    const lines: Item[] = system[label].length === 0 ? [] : [{ type: 'separator' }, ...system[label]]
    // the first line of all stands above nothing
    return { label, submenu: [...own(groups), ...lines].slice(1) }
  }).filter(({ submenu }) => Array.isArray(submenu) && submenu.length > 0)
  return [...(mac ? [{ role: 'appMenu' } as const] : []), ...menus, { role: 'windowMenu' }]
}

function itemOf({ id, label, keys, enabled }: MenuEntry, choose: (id: string) => void): Item {
  return {
    // a single & would underline the letter after it
    label: label.replaceAll('&', '&&'),
    enabled,
    click: () => choose(id),
    // shown, not claimed: the window hears its keys itself, and knows when they belong to a text entry
    ...(keys === '' || keys === 'Escape'
      ? {}
      : { accelerator: keys.replace('Ctrl', 'CmdOrCtrl'), registerAccelerator: false }),
  }
}
