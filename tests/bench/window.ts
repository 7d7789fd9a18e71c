import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Page } from '@playwright/test'
import { startProgram } from '../e2e/start-program.ts'
import { findBrowser } from '../gate/system-tools.ts'

/**
 * How long an edit takes to reach the screen, in headless Chromium over the real host, on the demo job and on the largest
 * deck of the catalogue: from the key press (its own time stamp) to the frame after the drawing has changed. Each press
 * moves the width of the one, the front beam of the other, so each goes through the worker: layout, frame,
 * checks, takeoff, drawing.
 */
const KEYS = 60
const APART = 120
const TARGET = 100
const TARGET_OF_THE_LARGEST = 200

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to measure with.')
const largest = JSON.parse(
  readFileSync(new URL('../fixtures/catalogue/largest.json', import.meta.url), 'utf8'),
)
const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-bench-'))
const started = performance.now()
const program = await startProgram(storeFolder)
const ready = performance.now() - started
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-quic'] })
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  const opened = performance.now()
  await page.goto(program.link)
  const flag = page.getByRole('main').getByRole('textbox', { name: 'Width' })
  await flag.waitFor()
  line('host ready after its start', ready, 300)
  line('window usable after opening', performance.now() - opened, 1000)
  await page.waitForTimeout(3000)
  await flag.focus()
  told('edit on the screen', await editsOn(page), TARGET)

  await page.keyboard.press('Control+Alt+o')
  await page
    .getByRole('dialog')
    .getByLabel('Job file')
    .setInputFiles({
      name: 'largest.kerfwright',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(largest.job)),
    })
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
  await page.getByRole('navigation', { name: 'Work places' }).getByRole('button', { name: 'Frame' }).click()
  const setback = page.getByRole('complementary').getByRole('textbox', { name: 'Setback' }).first()
  await setback.waitFor()
  await page.waitForTimeout(12_000)
  await setback.focus()
  told('edit of the largest deck', await editsOn(page), TARGET_OF_THE_LARGEST)
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}

/** Milliseconds of each key press that nudges the focused field, sorted; presses that came before the last was seen count with it. */
async function editsOn(page: Page): Promise<readonly number[]> {
  await page.evaluate(() => {
    const taken: number[] = []
    Object.assign(window, { taken })
    let pressed: number | null = null
    window.addEventListener('keydown', (event) => (pressed = event.timeStamp), true)
    const painted = (from: number) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel()
        port1.onmessage = () => taken.push(performance.now() - from)
        port2.postMessage(null)
      })
    }
    const drawing = document.querySelector('.sheet svg')
    if (!drawing) throw new Error('there is no drawing')
    new MutationObserver(() => {
      if (pressed === null) return
      painted(pressed)
      pressed = null
    }).observe(drawing, { attributes: true, childList: true, subtree: true })
  })
  for (let i = 0; i < KEYS; i += 1) {
    await page.keyboard.press(i % 20 < 10 ? 'ArrowDown' : 'ArrowUp')
    await page.waitForTimeout(APART)
  }
  await page.waitForTimeout(1000)
  const taken = await page.evaluate(() => (window as unknown as { taken: number[] }).taken)
  if (taken.length < KEYS * 0.5)
    throw new Error(`only ${taken.length} of ${KEYS} edits were seen on the screen`)
  return taken.toSorted((a, b) => a - b)
}

function told(what: string, sorted: readonly number[], target: number): void {
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
  line(`${what}, median of ${sorted.length}`, at(0.5), null)
  line(`${what}, 95th percentile`, at(0.95), target)
}

function line(what: string, value: number, target: number | null): void {
  process.stdout.write(
    `${what.padEnd(40)}${`${value.toFixed(0)} ms`.padStart(10)}${target === null ? '' : `   target ${target} ms${value > target ? ', missed' : ''}`}\n`,
  )
}
