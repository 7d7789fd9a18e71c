// Opens the program: in its own window where Electron's runtime can be had, else in the browser.
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { childEnvironment, ensureBuilt, ensureDependencies, modernNode, root, windows } from './lib.mjs'

const own = new Set(['--host', '--no-open'])
const flags = process.argv.slice(2).filter((flag) => own.has(flag))
const passedOn = process.argv.slice(2).filter((flag) => !own.has(flag))

ensureDependencies()
ensureBuilt()

const electronFolder = join(root, 'node_modules/electron')
const noDisplay = process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY
const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : []
const electron = flags.includes('--host') || noDisplay ? null : (findElectron() ?? fetchElectron())
const child = electron
  ? spawn(electron, [...asRoot, root, ...passedOn], { stdio: 'inherit' })
  : spawn(modernNode(), [join(root, 'out/main/host.js'), ...passedOn], {
      stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
      env: childEnvironment(),
    })

if (!electron) {
  let opened = false
  child.stdout.on('data', (text) => {
    process.stdout.write(text)
    const link = /Ready: (\S+)/.exec(String(text))?.[1]
    if (link && !opened && !flags.includes('--no-open')) openInBrowser(link)
    opened ||= Boolean(link)
  })
}

for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill('SIGTERM'))
// npm's shell does not pass its end on to this process; a changed parent means that it is gone.
const parent = process.ppid
setInterval(() => process.ppid !== parent && child.kill('SIGTERM'), 500).unref()
child.on('exit', (code) => process.exit(code ?? 0))

/** The binary's path, or null. Asking the electron package itself would start a download. */
function findElectron() {
  const named = process.env.ELECTRON_OVERRIDE_DIST_PATH
  if (named) return join(named, windows ? 'electron.exe' : 'electron')
  const pointer = join(electronFolder, 'path.txt')
  const binary = existsSync(pointer) ? join(electronFolder, 'dist', readFileSync(pointer, 'utf8')) : ''
  return existsSync(binary) && binary !== '' ? binary : null
}

/** Tries once to fetch the runtime, under a time limit: a network that never answers must not hold the program up. */
function fetchElectron() {
  process.stderr.write(
    'Fetching the Electron runtime (at most five minutes; --host does without it and uses the browser)…\n',
  )
  spawnSync(modernNode(), [join(electronFolder, 'install.js')], {
    stdio: ['ignore', 2, 'ignore'],
    timeout: 300_000,
  })
  const found = findElectron()
  if (!found) process.stderr.write('The Electron runtime cannot be had here: opening in the browser.\n')
  return found
}

function openInBrowser(link) {
  const [command, ...args] = windows
    ? ['cmd', '/c', 'start', '', link]
    : [process.platform === 'darwin' ? 'open' : 'xdg-open', link]
  const opener = spawn(command, args, { stdio: 'ignore', detached: true })
  opener.on('error', () => process.stderr.write('No browser could be opened; use the link above.\n'))
  opener.unref()
}
