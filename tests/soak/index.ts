import { parseArgs } from 'node:util'
import { runTool } from '../gate/run-tool.ts'

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '20' },
    runs: { type: 'string', default: '5000' },
    only: { type: 'string' },
    seed: { type: 'string' },
  },
})

/**
 * Property tests with many runs, each round with a fresh seed that is printed, until the time is up or one fails.
 * Start with a lone machine: `npm run soak -- --minutes 60`. A part of it, with a seed of its own for the first round and
 * the next ones after it: `npm run soak -- --only tests/properties/sizing.test --runs 1250 --seed 101`.
 */
const until = Date.now() + Number(values.minutes) * 60_000
process.env.FC_RUNS = values.runs
let rounds = 0
do {
  process.env.FC_SEED = String(
    (values.seed === undefined ? Date.now() : Number(values.seed) + rounds) % 0x7fffffff,
  )
  const args = [
    'run',
    '--project',
    'properties',
    '--project',
    'oracles',
    '--testTimeout=600000',
    ...(values.only === undefined ? [] : [values.only]),
  ]
  const { code } = await runTool('vitest', args, { show: true })
  if (code !== 0) {
    process.stdout.write(`Round ${rounds + 1} failed; its seed and path are above.\n`)
    process.exit(1)
  }
  rounds += 1
} while (Date.now() < until)
process.stdout.write(`${rounds} rounds of ${values.runs} runs each, none failed\n`)
