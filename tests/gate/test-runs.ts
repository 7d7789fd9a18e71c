import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { root, runTool } from './run-tool.ts'
import { type Outcome, type Step, verdict } from './step.ts'
import { findBrowser } from './system-tools.ts'

interface VitestJson {
  readonly numPassedTests: number
  readonly numFailedTests: number
  readonly numPendingTests: number
  readonly numTodoTests: number
  readonly numFailedTestSuites: number
}

interface PlaywrightJson {
  readonly stats: {
    readonly expected: number
    readonly unexpected: number
    readonly flaky: number
    readonly skipped: number
  }
}

/**
 * Counts come from the runner's JSON; one that is missing, counts nothing, or disagrees with the exit code is a
 * failure, so that a runner that never ran cannot look like one that passed.
 */
async function counted<T>(
  file: string,
  run: () => Promise<{ code: number }>,
  count: (json: T) => Omit<Outcome, 'report'>,
): Promise<Outcome> {
  const path = join(root, 'test-results', file)
  mkdirSync(join(root, 'test-results'), { recursive: true })
  rmSync(path, { force: true })
  const { code } = await run()
  if (!existsSync(path)) return verdict(`No results were written to test-results/${file}.`)
  const counts = count(JSON.parse(readFileSync(path, 'utf8')) as T)
  if (counts.passed === 0) return { ...counts, failed: counts.failed + 1, report: 'Not one test passed.' }
  if (code !== 0 && counts.failed === 0)
    return { ...counts, failed: 1, report: `The runner ended with code ${code}; its messages are above.` }
  return { ...counts, report: counts.failed > 0 ? `${counts.failed} failed; the messages are above.` : '' }
}

export function countVitest(json: VitestJson): Omit<Outcome, 'report'> {
  return {
    passed: json.numPassedTests,
    failed: json.numFailedTests,
    skipped: json.numPendingTests + json.numTodoTests,
  }
}

/** A test that passed only when tried again has failed once. */
export function countPlaywright({ stats }: PlaywrightJson): Omit<Outcome, 'report'> {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky, skipped: stats.skipped }
}

export const unitTests: Step = {
  name: 'unit',
  title: 'core, main, references, properties, contract, oracles',
  run() {
    const args = ['run', '--reporter=default', '--reporter=json', '--outputFile.json=test-results/unit.json']
    return counted<VitestJson>('unit.json', () => runTool('vitest', args, { show: true }), countVitest)
  },
}

export const windowTests: Step = {
  name: 'window',
  title: 'the window in a browser, and its accessibility',
  run() {
    const browser = findBrowser()
    if (!browser) return verdict('There is no browser to test the window in.')
    process.env.CHROME_PATH = browser
    return counted<PlaywrightJson>(
      'window.json',
      () => runTool('playwright', ['test'], { show: true }),
      countPlaywright,
    )
  },
}
