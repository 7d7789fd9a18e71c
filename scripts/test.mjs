import { ensureDependencies, runAndExit } from './lib.mjs'

ensureDependencies()
runAndExit('tests/gate/index.ts', process.argv.slice(2))
