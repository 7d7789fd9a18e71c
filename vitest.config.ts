import { dirname, resolve } from 'node:path'
import { defineConfig, type Plugin } from 'vitest/config'

/** What electron-vite does with `?modulePath` in a build, done for tests: the import gives the file's path. */
const modulePath: Plugin = {
  name: 'module-path',
  enforce: 'pre',
  resolveId(id, from) {
    if (!id.endsWith('?modulePath') || !from) return null
    const file = id.replace('?modulePath', '')
    return `\0path:${resolve(dirname(from), file.endsWith('.ts') ? file : `${file}.ts`)}`
  },
  load(id) {
    return id.startsWith('\0path:') ? `export default ${JSON.stringify(id.slice(6))}` : null
  },
}

function project(name: string, extra: { setupFiles?: string[]; testTimeout?: number } = {}) {
  return { plugins: [modulePath], test: { name, include: [`tests/${name}/**/*.test.ts`], ...extra } }
}

export default defineConfig({
  test: {
    testTimeout: 20_000,
    maxWorkers: 2,
    projects: [
      project('core'),
      project('main', { testTimeout: 60_000 }),
      project('renderer'),
      project('reference'),
      project('properties', { setupFiles: ['tests/properties/setup.ts'], testTimeout: 60_000 }),
      project('contract', { testTimeout: 60_000 }),
      project('oracles', { testTimeout: 60_000 }),
      project('gate'),
    ],
    coverage: { provider: 'v8', include: ['core/**/*.ts'], reportsDirectory: 'reports/coverage' },
  },
})
