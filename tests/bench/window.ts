import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { startProgram } from '../e2e/start-program.ts'
import { findBrowser } from '../gate/system-tools.ts'

/**
 * How long an edit takes to reach the screen, in headless Chromium over the real host, on the demo job: from the key
 * press (its own time stamp) to the frame after the drawing has changed. Each press moves the width by 6 in, so each
 * one goes through the worker: layout, frame, checks, takeoff, drawing.
 */
const KEYS = 60
const APART = 120
const TARGET = 150

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to measure with.')
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
  const usable = performance.now() - opened
  await page.waitForTimeout(3000)
  await flag.focus()
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
    const drawing = document.querySelector('[aria-label^="Framing plan to scale"]')
    if (!drawing) throw new Error('there is no drawing')
    new MutationObserver(() => {
      if (pressed === null) return
      painted(pressed)
      pressed = null
    }).observe(drawing, { attributes: true, attributeFilter: ['aria-label'] })
  })
  for (let i = 0; i < KEYS; i += 1) {
    await page.keyboard.press(i % 20 < 10 ? 'ArrowDown' : 'ArrowUp')
    await page.waitForTimeout(APART)
  }
  await page.waitForTimeout(1000)
  const taken = await page.evaluate(() => (window as unknown as { taken: number[] }).taken)
  if (taken.length < KEYS * 0.9)
    throw new Error(`only ${taken.length} of ${KEYS} edits were seen on the screen`)
  const sorted = taken.toSorted((a, b) => a - b)
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
  const line = (what: string, value: number, target: number | null) =>
    process.stdout.write(
      `${what.padEnd(36)}${`${value.toFixed(0)} ms`.padStart(10)}${target === null ? '' : `   target ${target} ms${value > target ? ', missed' : ''}`}\n`,
    )
  line('host ready after its start', ready, 300)
  line('window usable after opening', usable, 1500)
  line(`edit on the screen, median of ${taken.length}`, at(0.5), null)
  line('edit on the screen, 95th percentile', at(0.95), TARGET)
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}
