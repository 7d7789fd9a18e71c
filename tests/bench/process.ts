import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DEMO_JOB, writeJobText } from '../../core/job/index.ts'
import { startProgram } from '../e2e/start-program.ts'
import { root } from '../gate/run-tool.ts'

/** Whole processes on the demo job: the command line from start to end, and the memory of the host at work. */
const RUNS = 5
const folder = mkdtempSync(join(tmpdir(), 'kerfwright-bench-'))

function estimateWithWorkbook(job: string): number {
  const start = performance.now()
  const words = ['estimate', job, '--xlsx', join(folder, 'out.xlsx')]
  const run = spawnSync('node', [join(root, 'scripts/kerfwright.mjs'), ...words], { encoding: 'utf8' })
  if (run.status !== 0) throw new Error(run.stderr)
  return performance.now() - start
}

/** Resident memory of a process, MB; only Linux tells it. */
function resident(pid: number): number {
  const found = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]
  return Number(found ?? Number.NaN) / 1024
}

async function hostAtWork(): Promise<number> {
  const program = await startProgram(join(folder, 'store'))
  try {
    const { origin } = new URL(program.link)
    const first = await fetch(program.link, { redirect: 'manual' })
    const cookie = first.headers.get('set-cookie')?.split(';')[0] ?? ''
    for (let edit = 1; edit <= 20; edit += 1) {
      const statement = { ...DEMO_JOB, size: { ...(DEMO_JOB.size as object), width: `${18 + edit / 2} ft` } }
      const answer = await fetch(`${origin}/rpc`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', origin, cookie },
        body: JSON.stringify({
          jsonrpc: '2.0',
          id: edit,
          method: 'estimate.run',
          params: { edit, statement },
        }),
      })
      if (!answer.ok || 'error' in ((await answer.json()) as object)) throw new Error(`edit ${edit} failed`)
    }
    return resident(program.pid)
  } finally {
    await program.stop()
  }
}

try {
  const job = join(folder, 'demo.json')
  writeFileSync(job, writeJobText(DEMO_JOB))
  estimateWithWorkbook(job)
  const taken = Array.from({ length: RUNS }, () => estimateWithWorkbook(job)).sort((a, b) => a - b)
  const middle = taken[Math.floor(RUNS / 2)] ?? Number.NaN
  const missed = middle > 1500 ? ', missed' : ''
  process.stdout.write(
    `estimate demo.json --xlsx, whole process, median of ${RUNS}: ${middle.toFixed(0)} ms, target 1500 ms${missed}\n`,
  )
  if (process.platform === 'linux') {
    const memory = await hostAtWork()
    process.stdout.write(
      `memory of the host after 20 edits: ${memory.toFixed(0)} MB, target 250 MB${memory > 250 ? ', missed' : ''}\n`,
    )
  }
} finally {
  rmSync(folder, { recursive: true, force: true })
}
