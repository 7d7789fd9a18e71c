import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { type Step, verdict } from './step.ts'

interface SystemTool {
  readonly what: string
  /** Debian packages that bring it */
  readonly packages: readonly string[]
  find(): string | null
}

const windows = process.platform === 'win32'

function onPath(names: readonly string[], more: readonly string[] = []): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter)
  const places = names.flatMap((name) =>
    folders.map((folder) => join(folder, windows ? `${name}.exe` : name)),
  )
  return [...places, ...more].find((place) => existsSync(place)) ?? null
}

const tools: readonly SystemTool[] = [
  {
    what: 'a Chromium browser (or name one with CHROME_PATH)',
    packages: ['chromium', 'fonts-liberation'],
    find: () => {
      const named = process.env.CHROME_PATH
      // a path that names nothing is told, not followed into a failure of every window test
      if (named !== undefined) return existsSync(named) ? named : null
      return onPath(
        ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'],
        [
          '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
          '/Applications/Chromium.app/Contents/MacOS/Chromium',
          'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
          'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
        ],
      )
    },
  },
  {
    what: 'LibreOffice Calc (the command soffice), which recalculates the workbook',
    packages: ['libreoffice-calc'],
    find: () => onPath(['soffice']),
  },
  {
    what: 'Poppler (the command pdftotext), which reads printed pages back',
    packages: ['poppler-utils'],
    find: () => onPath(['pdftotext']),
  },
]

/** The browser that the window tests drive; null where there is none. */
export function findBrowser(): string | null {
  return tools[0]?.find() ?? null
}

function aptGet(...args: string[]): void {
  spawnSync('apt-get', args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  })
}

/** Programs that the tests drive. Root on a Debian system installs what is missing; elsewhere a person has to. */
export const systemTools: Step = {
  name: 'system',
  title: 'browser and office programs that the tests drive',
  run() {
    const missing = tools.filter((tool) => tool.find() === null)
    if (missing.length > 0 && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
      aptGet('update', '-qq')
      aptGet('install', '-y', '-qq', '--no-install-recommends', ...missing.flatMap((tool) => tool.packages))
    }
    const still = missing.filter((tool) => tool.find() === null)
    return verdict(
      still
        .map((tool) => `Please install ${tool.what}; on Debian: apt-get install ${tool.packages.join(' ')}`)
        .join('\n'),
    )
  },
}
