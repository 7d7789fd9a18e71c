import type { MenuItemConstructorOptions } from 'electron'

/** What every desktop program has: edit, size, window. Everything about decks is in the window itself. */
export function menuTemplate(platform: NodeJS.Platform): MenuItemConstructorOptions[] {
  const first: MenuItemConstructorOptions[] =
    platform === 'darwin' ? [{ role: 'appMenu' }] : [{ label: 'File', submenu: [{ role: 'quit' }] }]
  return [
    ...first,
    {
      label: 'Edit',
      submenu: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }],
    },
    {
      label: 'View',
      submenu: [
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
  ]
}
