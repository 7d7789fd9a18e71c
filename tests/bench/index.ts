import { runTool } from '../gate/run-tool.ts'

/** Everything that is timed, one after the other: the core, whole processes, the window in a browser. */
const built = await runTool('electron-vite', ['build', '--logLevel', 'warn'])
if (built.code !== 0) throw new Error(built.output)
await import('./estimate.ts')
await import('./largest.ts')
await import('./process.ts')
await import('./window.ts')
await import('./dragging-frames.ts')
await import('./papers.ts')
await import('./stopping.ts')
