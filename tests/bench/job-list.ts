import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { DEMO_JOB } from '../../core/job/index.ts'
import { startProgram } from '../e2e/start-program.ts'
import { findBrowser } from '../gate/system-tools.ts'

/**
 * How long five hundred jobs take to be listed, in headless Chromium over the real host and store: from the key that
 * opens the list (its own time stamp) to the frame after all of them stand there.
 */
const JOBS = 500
const RUNS = 7
const TARGET = 200

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to measure with.')
const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-bench-'))
const program = await startProgram(storeFolder)
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-quic'] })
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.goto(program.link)
  await page.getByRole('slider').first().waitFor()
  await page.evaluate(
    async ({ count, job }) => {
      for (let id = 1; id < count; id += 1) {
        const params = { statement: { ...JSON.parse(job), name: `Deck ${id}` } }
        await fetch('/rpc', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ jsonrpc: '2.0', id, method: 'jobs.create', params }),
        })
      }
    },
    { count: JOBS, job: JSON.stringify(DEMO_JOB) },
  )
  await page.reload()
  await page.getByRole('slider').first().waitFor()
  await page.waitForTimeout(5000)
  const taken: number[] = []
  for (let run = 0; run < RUNS; run += 1) {
    const listed = page.evaluate(
      (count) =>
        new Promise<number>((done) => {
          let pressed = 0
          window.addEventListener('keydown', (event) => (pressed = event.timeStamp), {
            capture: true,
            once: true,
          })
          const look = () => {
            if (document.querySelectorAll('.jobs-rows[aria-label="Jobs"] > li').length < count)
              return requestAnimationFrame(look)
            const { port1, port2 } = new MessageChannel()
            port1.onmessage = () => done(performance.now() - pressed)
            port2.postMessage(null)
          }
          requestAnimationFrame(look)
        }),
      JOBS,
    )
    await page.keyboard.press('Control+Alt+o')
    taken.push(await listed)
    await page.keyboard.press('Escape')
    await page.getByRole('dialog').waitFor({ state: 'hidden' })
    await page.waitForTimeout(300)
  }
  taken.sort((a, b) => a - b)
  const median = taken[Math.floor(RUNS / 2)] ?? Number.NaN
  const worst = taken.at(-1) ?? Number.NaN
  process.stdout.write(
    `${JOBS} jobs listed, median · worst of ${RUNS}: ${median.toFixed(0)} · ${worst.toFixed(0)} ms, target ${TARGET} ms${median > TARGET ? ', missed' : ''}\n`,
  )
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}
