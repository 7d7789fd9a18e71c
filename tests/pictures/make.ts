import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { startProgram } from '../e2e/start-program.ts'
import { root, runTool } from '../gate/run-tool.ts'
import { findBrowser } from '../gate/system-tools.ts'

/** Pictures of the window with the demo job, for the README: `npm run pictures` builds, opens and photographs it. */
const built = await runTool('electron-vite', ['build', '--logLevel', 'warn'])
if (built.code !== 0) throw new Error(built.output)

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to make the pictures with.')
const folder = join(root, 'docs')
mkdirSync(folder, { recursive: true })
const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-pictures-'))
const program = await startProgram(storeFolder)
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-quic'] })
try {
  for (const colorScheme of ['light', 'dark'] as const) {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme })
    await page.goto(program.link)
    await page.getByRole('slider').first().waitFor()
    await page.getByText('filling in').waitFor({ state: 'hidden', timeout: 120_000 })
    const name = colorScheme === 'light' ? 'window.png' : 'window-dark.png'
    await page.screenshot({ path: join(folder, name), animations: 'disabled' })
    process.stdout.write(`docs/${name}\n`)
    await page.close()
  }
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}
