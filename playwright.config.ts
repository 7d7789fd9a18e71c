import { defineConfig } from '@playwright/test'

const browser = process.env.CHROME_PATH

export default defineConfig({
  testDir: 'tests',
  testMatch: ['e2e/**/*.spec.ts', 'a11y/**/*.spec.ts'],
  // The runner empties its output folder; the results of the other tests lie beside it.
  outputDir: 'test-results/e2e',
  // each test has a program and a store of its own
  workers: 2,
  fullyParallel: true,
  retries: 0,
  forbidOnly: true,
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: [['list'], ['json', { outputFile: 'test-results/window.json' }]],
  use: {
    viewport: { width: 1280, height: 800 },
    // a page of many drawings is slow to record: a test that fails is run again with --trace on
    launchOptions: {
      ...(browser ? { executablePath: browser } : {}),
      args: [
        '--no-sandbox',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
})
