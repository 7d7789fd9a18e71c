import fc from 'fast-check'

/** The seed is printed, so that a failure can be run again: FC_SEED=… FC_PATH=… with `-t` and the test's name. */
const seed = Number(process.env.FC_SEED ?? Date.now() % 0x7fffffff)
const path = process.env.FC_PATH
fc.configureGlobal({
  seed,
  numRuns: Number(process.env.FC_RUNS ?? 100),
  ...(path ? { path, endOnFailure: true } : {}),
})
process.stdout.write(`fast-check seed ${seed}\n`)
