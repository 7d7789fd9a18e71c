import { defineConfig } from 'vitest/config'

/** Time limits stop what hangs; they are far above what a busy machine needs, so that they decide no result. */
function project(name: string, extra: { setupFiles?: string[] } = {}) {
  return {
    test: {
      name,
      include: [`tests/${name}/**/*.test.ts`],
      testTimeout: 180_000,
      hookTimeout: 180_000,
      ...extra,
    },
  }
}

export default defineConfig({
  test: {
    maxWorkers: 2,
    // core is pure and every store has a folder of its own: files share a worker, and with it what they import
    isolate: false,
    projects: [
      project('core', { setupFiles: ['tests/properties/setup.ts'] }),
      project('main'),
      project('renderer', { setupFiles: ['tests/properties/setup.ts'] }),
      project('reference'),
      project('properties', { setupFiles: ['tests/properties/setup.ts'] }),
      project('contract'),
      project('oracles', { setupFiles: ['tests/properties/setup.ts'] }),
      project('gate'),
    ],
    coverage: { provider: 'v8', include: ['core/**/*.ts'], reportsDirectory: 'reports/coverage' },
  },
})
