import { defineConfig } from 'vitest/config'

/** The mutation run of the auditor: plans that are kept in files, without an engine, so that a mutant takes a moment. */
export default defineConfig({
  test: { include: ['tests/core/cutting/audit/*.test.ts'], testTimeout: 60_000 },
})
