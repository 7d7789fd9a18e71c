// Runs any file of this repository under Node 24: `node scripts/run.mjs [--OPTION OF NODE]… FILE [ARGUMENTS]`.
import { ensureDependencies, runAndExit } from './lib.mjs'

const given = process.argv.slice(2)
const at = given.findIndex((text) => !text.startsWith('--'))
const options = given.slice(0, Math.max(0, at))
const [file, ...args] = at < 0 ? [] : given.slice(at)
if (!file) {
  process.stderr.write('Name the file to run, as in: node scripts/run.mjs tests/bench/estimate.ts\n')
  process.exit(2)
}
ensureDependencies()
runAndExit(file, args, options)
