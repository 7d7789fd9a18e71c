// Runs any file of this repository under Node 24: `node scripts/run.mjs FILE [ARGUMENTS]`.
import { ensureDependencies, runAndExit } from './lib.mjs'

const [file, ...args] = process.argv.slice(2)
if (!file) {
  process.stderr.write('Name the file to run, as in: node scripts/run.mjs tests/bench/estimate.ts\n')
  process.exit(2)
}
ensureDependencies()
runAndExit(file, args)
