import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type CDPSession, chromium } from '@playwright/test'
import { startProgram } from '../e2e/start-program.ts'
import { findBrowser } from '../gate/system-tools.ts'

/**
 * Memory of the host and of the page over many edits of the demo job: `npm run soak:edits`. Each edit moves the width by
 * half a foot and reaches the screen; every tenth is waited for until its estimate is there. Fails over the limit, or
 * where the second half ends clearly above its beginning. Linux only: it reads the host's memory from the system.
 */
const EDITS = 2_000
const EVERY = 100
const LIMIT_MB = 400
/** growth over the last half that is taken for flat */
const FLAT = 0.1

const executablePath = findBrowser()
if (!executablePath) throw new Error('There is no browser to edit in.')
const storeFolder = mkdtempSync(join(tmpdir(), 'kerfwright-soak-'))
const program = await startProgram(storeFolder)
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-quic'] })
const seen: { readonly edits: number; readonly host: number; readonly page: number }[] = []
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } })
  const client = await page.context().newCDPSession(page)
  await client.send('Performance.enable')
  await page.goto(program.link)
  const slider = page.getByRole('slider').first()
  await slider.waitFor()
  await slider.focus()
  const settled = page.locator('footer[aria-label="The estimate"][aria-busy="false"]')
  for (let edits = 1; edits <= EDITS; edits += 1) {
    await page.keyboard.press(edits % 20 < 10 ? 'ArrowRight' : 'ArrowLeft')
    await page.waitForTimeout(40)
    if (edits % 10 === 0) await settled.waitFor({ timeout: 60_000 })
    if (edits % EVERY === 0) {
      seen.push({ edits, host: hostMemory(program.pid), page: await pageMemory(client) })
      const { host, page: own } = seen.at(-1) ?? { host: 0, page: 0 }
      process.stdout.write(`${edits} edits: host ${host.toFixed(0)} MB, page ${own.toFixed(0)} MB\n`)
    }
  }
} finally {
  await browser.close()
  await program.stop()
  rmSync(storeFolder, { recursive: true, force: true })
}

const half = seen.filter(({ edits }) => edits > EDITS / 2)
let failed = false
for (const side of ['host', 'page'] as const) {
  const greatest = Math.max(...seen.map((at) => at[side]))
  const middle = (list: typeof half) =>
    list.map((at) => at[side]).sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? 0
  const growth = middle(half.slice(-5)) / middle(half.slice(0, 5)) - 1
  const wrong = greatest > LIMIT_MB || growth > FLAT
  failed ||= wrong
  process.stdout.write(
    `${side}: at most ${greatest.toFixed(0)} MB of ${LIMIT_MB}; over the last ${EDITS / 2} edits ${(growth * 100).toFixed(1)} %${wrong ? ', missed' : ''}\n`,
  )
}
process.exitCode = failed ? 1 : 0

/** Resident memory of a process, MB. */
function hostMemory(pid: number): number {
  const kb = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]
  return Number(kb) / 1024
}

/** What the page's scripts hold once everything that can go has gone, MB. */
async function pageMemory(client: CDPSession): Promise<number> {
  await client.send('HeapProfiler.collectGarbage')
  const { metrics } = await client.send('Performance.getMetrics')
  return (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN) / 1e6
}
