import { runTool } from './run-tool.ts'
import { type Step, verdict } from './step.ts'

/** Checks whose tool judges by its exit code. */
function judgedByExit(
  name: string,
  title: string,
  tool: Parameters<typeof runTool>[0],
  args: readonly string[],
): Step {
  return {
    name,
    title,
    async run() {
      const { code, output } = await runTool(tool, args)
      return verdict(code === 0 ? '' : output || `${tool} ended with code ${code} and said nothing.`)
    },
  }
}

/** `-b`, as the root tsconfig lists no files of its own: `-p .` would check nothing and pass. */
export const types = judgedByExit('types', 'types, each environment by itself', 'tsc', [
  '-b',
  '--pretty',
  'false',
])

export const style = judgedByExit('style', 'formatting and lint', 'biome', ['ci', '--colors=off', '.'])

export const deadCode = judgedByExit('dead-code', 'files, exports and packages that nothing uses', 'knip', [
  '--no-progress',
])

export const build = judgedByExit('build', 'build of window, host and desktop', 'electron-vite', [
  'build',
  '--logLevel',
  'warn',
])
