// Shared by the launchers. Runs on any Node from 18 on, before anything is installed: built-in modules only.
import { spawn, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { delimiter, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = dirname(dirname(fileURLToPath(import.meta.url)))
export const windows = process.platform === 'win32'
const modules = join(root, 'node_modules')

/** Installs what the lock file names, once per lock file. Its output goes to stderr: stdout belongs to the program. */
export function ensureDependencies() {
  const want = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(`${process.platform}-${process.arch}`)
    .digest('hex')
  const stamp = join(modules, '.installed')
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === want) return
  process.stderr.write('Installing what the program needs (once, about a minute)…\n')
  const args = ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error']
  const options = { cwd: root, stdio: ['ignore', 2, 2] }
  const npm = process.env.npm_execpath
  const run = npm?.endsWith('.js')
    ? spawnSync(process.execPath, [npm, ...args], options)
    : spawnSync(windows ? 'npm.cmd' : 'npm', args, { ...options, shell: windows })
  if (run.status !== 0) {
    process.stderr.write('npm could not install the packages; its message is above.\n')
    process.exit(run.status || 1)
  }
  writeFileSync(stamp, want)
}

/** Node 24 out of the installed packages, so that a system Node of 20 is enough to start with. */
export function modernNode() {
  const platform = windows ? 'win' : process.platform
  for (const name of [`node-${platform}-${process.arch}`, `node-bin-${platform}-${process.arch}`]) {
    const binary = join(modules, name, 'bin', windows ? 'node.exe' : 'node')
    if (existsSync(binary)) return binary
  }
  if (Number(process.versions.node.split('.')[0]) >= 24) return process.execPath
  process.stderr.write(
    `Node ${process.versions.node} is too old and no packaged Node 24 fits this machine. Please install Node 24.\n`,
  )
  return process.exit(1)
}

/** Environment for a child: Node 24 first on the path, no options inherited, compiled code kept between runs. */
export function childEnvironment() {
  const { NODE_OPTIONS: _dropped, ...rest } = process.env
  return {
    ...rest,
    PATH: [dirname(modernNode()), process.env.PATH].join(delimiter),
    NODE_COMPILE_CACHE: join(modules, '.cache', 'node'),
  }
}

/** Runs a file of this repository under Node 24 and ends this process with the same exit code. */
export function runAndExit(file, args, options = []) {
  const child = spawn(modernNode(), [...options, join(root, file), ...args], {
    stdio: 'inherit',
    // what was compiled once is read from here the next time: half a second less at each start
    env: { NODE_COMPILE_CACHE: join(modules, '.cache/compiled'), ...childEnvironment() },
  })
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal))
  child.on('exit', (code, signal) => process.exit(code ?? (signal ? 1 : 0)))
}

function newestUnder(path) {
  const found = statSync(path, { throwIfNoEntry: false })
  if (!found) return 0
  if (!found.isDirectory()) return found.mtimeMs
  return Math.max(found.mtimeMs, ...readdirSync(path).map((name) => newestUnder(join(path, name))))
}

/** Builds the window and the host where a source is newer than the last build (about three seconds). */
export function ensureBuilt() {
  const built = statSync(join(root, 'out/renderer/index.html'), { throwIfNoEntry: false })?.mtimeMs ?? 0
  const sources = ['core', 'main', 'renderer', 'shared', 'electron.vite.config.ts', 'package-lock.json']
  if (Math.max(...sources.map((name) => newestUnder(join(root, name)))) <= built) return
  process.stderr.write('Building…\n')
  const run = spawnSync(modernNode(), [join(modules, 'electron-vite/bin/electron-vite.js'), 'build'], {
    cwd: root,
    env: childEnvironment(),
    encoding: 'utf8',
  })
  if (run.status !== 0) {
    process.stderr.write(`${run.stdout}${run.stderr}\nThe build failed; its messages are above.\n`)
    process.exit(1)
  }
}
