import { defineConfig } from 'vitest/config'

/** The mutation run of the auditor: plans with one fault each, and a few random plans with everything changed in turn. */
export default defineConfig({
  test: {
    include: [
      'tests/core/cutting/audit*.test.ts',
      'tests/core/cutting/audit/*.test.ts',
      'tests/oracles/audit.test.ts',
    ],
    setupFiles: ['tests/properties/setup.ts'],
    env: { FC_RUNS: '3' },
    testTimeout: 60_000,
  },
})
