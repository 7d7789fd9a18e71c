import { ensureDependencies, runAndExit } from './lib.mjs'

ensureDependencies()
runAndExit('main/cli/index.ts', process.argv.slice(2))
