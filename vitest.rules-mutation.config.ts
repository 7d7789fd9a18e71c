import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Quick tests first: the first failure ends a mutant's run. */
class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const slow = ({ moduleId }: TestSpecification) => Number(moduleId.includes('/properties/'))
    return [...files].sort((a, b) => slow(a) - slow(b) || a.moduleId.localeCompare(b.moduleId))
  }
}

/** The mutation run of the formulas and look-ups: the tests that can notice a change in them, and no projects. */
export default defineConfig({
  test: {
    include: [
      'tests/core/rules/**/*.test.ts',
      'tests/core/data/*.test.ts',
      'tests/reference/*.test.ts',
      'tests/properties/{beams,sections}.test.ts',
    ],
    exclude: [
      'tests/reference/{least-costs,trade-worked-example,differences,concrete,worked-measures}.test.ts',
    ],
    setupFiles: ['tests/properties/setup.ts'],
    // a law that a mutant breaks is broken: no search for the smallest case
    env: { FC_RUNS: '25', FC_END_ON_FAILURE: '1' },
    testTimeout: 60_000,
    // one process without isolation: a run for each change, and nothing here keeps state
    isolate: false,
    fileParallelism: false,
    sequence: { sequencer: QuickFirst },
  },
})
