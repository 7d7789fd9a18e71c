import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { startProgram } from '../e2e/start-program.ts'
import { root, runTool } from '../gate/run-tool.ts'
import { findBrowser } from '../gate/system-tools.ts'

/**
 * Pictures of the window with the demo job: `npm run pictures` builds it, opens it and takes the two of the README into
 * `docs`, and every work place in both themes into `reports/pictures`, which is not committed.
 */
const built = await runTool('electron-vite', ['build', '--logLevel', 'warn'])
if (built.code !== 0) throw new Error(built.output)

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to make the pictures with.')
const folder = join(root, 'docs')
const places = join(root, 'reports/pictures')
for (const each of [folder, places]) mkdirSync(each, { recursive: true })
const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-pictures-'))
const program = await startProgram(storeFolder)
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-quic'] })
try {
  for (const colorScheme of ['light', 'dark'] as const) {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme })
    await page.goto(program.link)
    await page.getByRole('slider').first().waitFor()
    await page.getByText('filling in').waitFor({ state: 'hidden', timeout: 120_000 })
    // the fields beside the drawing come last
    await page.getByRole('combobox').first().waitFor()
    const name = colorScheme === 'light' ? 'window.png' : 'window-dark.png'
    await page.screenshot({ path: join(folder, name), animations: 'disabled' })
    process.stdout.write(`docs/${name}\n`)
    await page.setViewportSize({ width: 1280, height: 720 })
    for (const button of await page
      .getByRole('navigation', { name: 'Work places' })
      .getByRole('button')
      .all()) {
      const place = ((await button.textContent()) ?? 'place').trim().toLowerCase()
      await button.click()
      await page
        .getByRole('contentinfo', { name: 'The estimate' })
        .and(page.locator('[aria-busy="false"]'))
        .waitFor()
      // pages of papers and lists are drawn after the place has changed
      await page.waitForTimeout(1500)
      await page.screenshot({ path: join(places, `${place}-${colorScheme}.png`), animations: 'disabled' })
      process.stdout.write(`reports/pictures/${place}-${colorScheme}.png\n`)
    }
    await page.close()
  }
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}
