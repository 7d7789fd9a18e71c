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

/** Where the window's groups of commands stand, in the order every program has; a group not named here stands under File. */
const MENUS = [
  { label: 'File', groups: ['Job', 'Papers'] },
  { label: 'Edit', groups: ['Edit'] },
  { label: 'View', groups: ['View', 'Drawing'] },
  { label: 'Go', groups: ['Work places'] },
] as const
const HELP = { label: 'Help', groups: ['Help'] } as const

/** Commands that stand in the program's own menu on a Mac. */
const IN_APP_MENU = { about: 'about', settings: 'settings' } as const

const PLACED: ReadonlySet<string> = new Set([...MENUS, HELP].flatMap(({ groups }) => groups))

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
  const inAppMenu = mac ? Object.values<string>(IN_APP_MENU) : []
  const own = (groups: readonly string[]): Item[] =>
    groups.flatMap((group) => {
      const found = commands.filter(
        (entry) =>
          !inAppMenu.includes(entry.id) &&
          (entry.group === group || (group === 'Job' && !PLACED.has(entry.group))),
      )
      return found.length === 0 ? [] : [{ type: 'separator' }, ...found.map((entry) => itemOf(entry, choose))]
    })
  const system: { readonly [menu in (typeof MENUS)[number]['label'] | 'Help']: Item[] } = {
    File: mac ? [] : [{ role: 'quit' }],
    Edit: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }],
    View: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, { role: 'togglefullscreen' }],
    Go: [],
    Help: [],
  }
  // the letter after & is the menu's access key; a Mac has none
  const named = (label: string) => (mac ? label : `&${label}`)
  const menuOf = ({ label, groups }: (typeof MENUS)[number] | typeof HELP): Item[] => {
    const lines: Item[] = system[label].length === 0 ? [] : [{ type: 'separator' }, ...system[label]]
    // the first line of all stands above nothing
    const submenu = [...own(groups), ...lines].slice(1)
    return submenu.length === 0 ? [] : [{ label: named(label), submenu }]
  }
  return [
    ...(mac ? [appMenu(commands, choose)] : []),
    ...MENUS.flatMap(menuOf),
    { role: 'windowMenu', ...(mac ? {} : { label: named('Window') }) },
    ...menuOf(HELP),
  ]
}

/** The program's own menu on a Mac: what it is, its settings, and what the system offers for every program. */
function appMenu(commands: readonly MenuEntry[], choose: (id: string) => void): Item {
  const own = (id: string) =>
    commands.filter((entry) => entry.id === id).map((entry) => itemOf(entry, choose))
  const line: Item = { type: 'separator' }
  const followed = (items: Item[]): Item[] => (items.length === 0 ? [] : [...items, line])
  return {
    role: 'appMenu',
    submenu: [
      ...followed(own(IN_APP_MENU.about)),
      ...followed(own(IN_APP_MENU.settings)),
      { role: 'services' },
      line,
      { role: 'hide' },
      { role: 'hideOthers' },
      { role: 'unhide' },
      line,
      { role: 'quit' },
    ],
  }
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
