// Makes installers of this system: `npm run package`. The packager is fetched when it is asked for, as nothing else needs it.
import { spawnSync } from 'node:child_process'
import { childEnvironment, ensureBuilt, ensureDependencies, root, windows } from './lib.mjs'

const PACKAGER = 'electron-builder@26.17.0'

ensureDependencies()
ensureBuilt()
const run = spawnSync(
  windows ? 'npm.cmd' : 'npm',
  [
    'exec',
    '--yes',
    `--package=${PACKAGER}`,
    '--',
    'electron-builder',
    '--config',
    'packaging/desktop.json',
    ...process.argv.slice(2),
  ],
  { cwd: root, env: childEnvironment(), stdio: 'inherit', shell: windows },
)
process.exit(run.status ?? 1)
