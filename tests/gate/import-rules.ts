import { join } from 'node:path'
import { root, runTool } from './run-tool.ts'
import { type Outcome, type Step, together, verdict } from './step.ts'

interface Cruise {
  readonly totalCruised: number
  readonly error: number
  readonly violations: readonly {
    readonly from: string
    readonly to: string
    readonly rule: { readonly name: string }
  }[]
  readonly ruleSetUsed: {
    readonly forbidden: readonly { readonly name: string; readonly comment?: string }[]
  }
}

/**
 * Fewer modules than this means that the tool saw nothing, not that nothing is wrong: it passes an empty folder.
 * Raise it as the program grows.
 */
const fewestModules = 400

async function cruise(folder: string): Promise<Cruise> {
  const config = join(root, '.dependency-cruiser.mjs')
  const args = ['core', 'shared', 'main', 'renderer', '--config', config, '-T', 'json']
  const { stdout, output } = await runTool('dependency-cruiser', args, { folder })
  if (!stdout.startsWith('{')) throw new Error(output)
  return (JSON.parse(stdout) as { summary: Cruise }).summary
}

/** Judged by the JSON: the tool's exit code is the number of errors modulo 256. */
async function arrowsHold(): Promise<Outcome> {
  const { error, totalCruised, violations, ruleSetUsed } = await cruise(root)
  if (totalCruised < fewestModules)
    return verdict(`Only ${totalCruised} modules were looked at; at least ${fewestModules} were expected.`)
  const comments = new Map(ruleSetUsed.forbidden.map((rule) => [rule.name, rule.comment ?? '']))
  const lines = violations.map(
    ({ from, to, rule }) => `${from} imports ${to}\n  ${rule.name}: ${comments.get(rule.name)}`,
  )
  return verdict(error > 0 ? lines.join('\n') : '')
}

/** Every rule must fire on the fixture that breaks it: a rule that matches nothing looks just like one that holds. */
async function rulesFire(): Promise<Outcome> {
  const { violations, ruleSetUsed } = await cruise(join(root, 'tests/fixtures/canary'))
  const fired = new Set(violations.map(({ rule }) => rule.name))
  const silent = ruleSetUsed.forbidden.map((rule) => rule.name).filter((name) => !fired.has(name))
  return verdict(silent.map((name) => `${name} did not fire on tests/fixtures/canary.`).join('\n'))
}

export const importRules: Step = {
  name: 'imports',
  title: 'import arrows, and that each of them would be noticed',
  async run() {
    return together([await arrowsHold(), await rulesFire()])
  },
}
