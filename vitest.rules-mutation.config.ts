import { defineConfig } from 'vitest/config'

/** The mutation run of the formulas and look-ups: the tests that can notice a change in them, and no projects. */
export default defineConfig({
  test: {
    include: ['tests/core/rules/**/*.test.ts', 'tests/reference/*.test.ts', 'tests/properties/beams.test.ts'],
    exclude: [
      'tests/reference/{least-costs,trade-worked-example,differences,concrete,worked-measures}.test.ts',
    ],
    setupFiles: ['tests/properties/setup.ts'],
    testTimeout: 60_000,
    // one process without isolation: a run for each change, and nothing here keeps state
    isolate: false,
    fileParallelism: false,
  },
})
