import { defineConfig } from 'vitest/config'

/** The mutation run changes core/units: it needs the tests that can notice, and no projects. */
export default defineConfig({
  test: { include: ['tests/core/units/**/*.test.ts', 'tests/properties/units/**/*.test.ts'] },
})
