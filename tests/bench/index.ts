import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { runTool } from '../gate/run-tool.ts'

/** Everything that is timed, one after the other: the core, whole processes, the window in a browser. */
const built = await runTool('electron-vite', ['build', '--logLevel', 'warn'])
if (built.code !== 0) throw new Error(built.output)
await import('./estimate.ts')
await import('./largest.ts')
await import('./process.ts')
await import('./window.ts')
await import('./job-list.ts')
await import('./dragging-frames.ts')
papersAlone()
await import('./stopping.ts')

/** In a process of its own, with the flags that the command line has for them: its memory is what a set of papers takes. */
function papersAlone(): void {
  const file = fileURLToPath(new URL('papers.ts', import.meta.url))
  spawnSync(process.execPath, ['--max-semi-space-size=8', '--optimize-for-size', file], { stdio: 'inherit' })
}
