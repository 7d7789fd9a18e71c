import fc from 'fast-check'

/**
 * The gate tries the same cases each time, so that it says the same of the same tree; the soak brings fresh seeds. A
 * failure prints its seed and path, so that it can be run again: FC_SEED=… FC_PATH=… with `-t` and the test's name.
 */
const seed = Number(process.env.FC_SEED ?? 20_261_125)
const path = process.env.FC_PATH
fc.configureGlobal({
  seed,
  numRuns: Number(process.env.FC_RUNS ?? 100),
  ...(path ? { path } : {}),
  // one case run again, and a mutation run, need no search for the smallest case that fails
  endOnFailure: path !== undefined || process.env.FC_END_ON_FAILURE === '1',
})
