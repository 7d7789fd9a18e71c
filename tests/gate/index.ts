import { importRules } from './import-rules.ts'
import { licences } from './licences.ts'
import { build, deadCode, style, types } from './static-checks.ts'
import { type Outcome, type Step, together, verdict } from './step.ts'
import { systemTools } from './system-tools.ts'
import { unitTests, windowTests } from './test-runs.ts'

const steps: readonly Step[] = [
  systemTools,
  types,
  style,
  importRules,
  deadCode,
  licences,
  build,
  unitTests,
  windowTests,
]

function chosen(args: readonly string[]): readonly Step[] {
  if (args.length === 0) return steps
  const wanted = args[0] === '--only' ? (args[1] ?? '').split(',') : []
  const found = steps.filter(({ name }) => wanted.includes(name))
  if (found.length !== wanted.length || found.length === 0) {
    process.stderr.write(
      `npm test -- --only NAMES takes, with commas: ${steps.map(({ name }) => name).join(', ')}\n`,
    )
    process.exit(2)
  }
  return found
}

async function attempt(step: Step): Promise<Outcome> {
  try {
    return await step.run()
  } catch (fault) {
    return verdict(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault))
  }
}

const outcomes: Outcome[] = []
for (const step of chosen(process.argv.slice(2))) {
  const began = performance.now()
  process.stdout.write(`\n${step.title} (${step.name})\n`)
  const outcome = await attempt(step)
  outcomes.push(outcome)
  const seconds = ((performance.now() - began) / 1000).toFixed(1)
  if (outcome.report !== '') process.stdout.write(`${outcome.report}\n`)
  process.stdout.write(`${outcome.failed === 0 ? 'passed' : 'FAILED'} in ${seconds} s\n`)
}
const { passed, failed, skipped } = together(outcomes)
process.exitCode = failed === 0 ? 0 : 1
process.stdout.write(`\n${passed} passed, ${failed} failed, ${skipped} skipped\n`)
