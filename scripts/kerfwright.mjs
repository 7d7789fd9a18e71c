import { ensureDependencies, runAndExit } from './lib.mjs'

ensureDependencies()
const words = process.argv.slice(2)
// a small young heap: collected more often, at no more processor time, and 120 MB less for the largest deck's papers;
// code made small in place of fast: 50 to 90 MB less again for an eighth more processor time, which papers can spare
const small = words[0] === 'papers' ? ['--optimize-for-size'] : []
runAndExit('main/cli/index.ts', words, ['--max-semi-space-size=8', ...small])
