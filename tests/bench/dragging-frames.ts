import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type CDPSession, chromium, type Page } from '@playwright/test'
import { startProgram } from '../e2e/start-program.ts'
import { findBrowser } from '../gate/system-tools.ts'

/**
 * Frames a second while a post and an edge of the demo job are drawn to and fro, in headless Chromium over the real host:
 * the pointer moves every 12 ms for some seconds, and the page counts its frames and the decks that reach the screen.
 * Beside it the page's own processor time for each deck, which does not hang on what else the machine does.
 */
const SECONDS = 4
const TARGET = 30

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to measure with.')
const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-bench-'))
const program = await startProgram(storeFolder)
const browser = await chromium.launch({
  executablePath,
  args: ['--no-sandbox', '--no-zygote', '--disable-quic'],
})
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.goto(program.link)
  await page.locator('.grip').first().waitFor()
  await page.waitForTimeout(3000)
  for (const [what, grip] of [
    ['a post', 'post-front-2'],
    ['the right edge', 'edge-2'],
  ] as const) {
    const { frames, slowest, decks, busy } = await measured(page, grip)
    const rate = frames / SECONDS
    process.stdout.write(
      `${`drawing ${what}`.padEnd(26)}${`${rate.toFixed(0)} frames/s`.padStart(14)}${`, 95 % within ${slowest.toFixed(0)} ms`}, ${(decks / SECONDS).toFixed(0)} decks/s, ${(busy / Math.max(1, decks)).toFixed(0)} ms of processor each   target ${TARGET} frames/s${rate < TARGET ? ', missed' : ''}\n`,
    )
  }
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}

async function measured(page: Page, grip: string) {
  const box = await page.locator(`[data-grip="${grip}"]`).boundingBox()
  if (!box) throw new Error(`${grip} is not on the screen`)
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.evaluate(() => {
    const seen = { times: [] as number[], decks: 0 }
    Object.assign(window, { seen })
    const next = (time: number) => {
      seen.times.push(time)
      requestAnimationFrame(next)
    }
    requestAnimationFrame(next)
    const sheet = document.querySelector('.sheet svg')
    if (!sheet) throw new Error('there is no drawing')
    // one batch of changes to members is one deck
    new MutationObserver((changes) => {
      if (
        changes.some(
          ({ target }) =>
            target instanceof Element &&
            /dimension|on-posts/.test(target.className.toString() + (target.getAttribute('class') ?? '')),
        )
      )
        seen.decks += 1
    }).observe(sheet, { subtree: true, attributes: true, childList: true, characterData: true })
  })
  const client = await page.context().newCDPSession(page)
  await client.send('Performance.enable', { timeDomain: 'threadTicks' })
  const before = await busyOf(client)
  const end = Date.now() + SECONDS * 1000
  for (let i = 0; Date.now() < end; i += 1) {
    const away = 40 * Math.sin(i / 12)
    await page.mouse.move(from.x + away, from.y)
    await page.waitForTimeout(12)
  }
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { times: number[]; decks: number } }).seen,
  )
  const busy = (await busyOf(client)) - before
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await page.waitForTimeout(1500)
  const gaps = seen.times.slice(1).map((time, i) => time - (seen.times[i] ?? time))
  const sorted = gaps.toSorted((a, b) => a - b)
  return {
    frames: gaps.length,
    slowest: sorted[Math.floor(sorted.length * 0.95)] ?? Number.NaN,
    decks: seen.decks,
    busy,
  }
}

/** Processor time of the page's own thread so far, ms. */
async function busyOf(client: CDPSession): Promise<number> {
  const { metrics } = await client.send('Performance.getMetrics')
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000
}
