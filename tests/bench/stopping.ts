import { join } from 'node:path'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { ticks } from '../../core/units/index.ts'
import { createPool } from '../../main/workers/index.ts'

/**
 * How long a person waits for the answer who stops a list that is hard to prove: so many lengths between a sixth and a
 * half of a board that a program of the search takes a second and hears nothing meanwhile.
 */
const LENGTHS = 200
/** The window offers to stop what has run for a second. The first one also starts the worker. */
const AFTER_A_SECOND = [1000, 1050, 1100, 1200, 1350, 1500, 1700, 1900, 2200, 2600, 3000]
/** Only another program could stop so soon: the second worker is not ready. */
const AT_ONCE = [50, 200, 450]
const TARGET = 100

let seed = 1
const random = (): number => {
  seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
  return seed / 2 ** 32
}
const rows = Array.from(
  { length: LENGTHS },
  (_, k) => `P${k + 1},${1 + (k % 3)},${17 + Math.floor(random() * 1088) / 32}`,
)
const text = ['mark,count,length in', ...rows].join('\n')
const stockText = 'stock length in,price\n100,10.00\n143,14.60\n'

const pool = createPool({ workerPath: join(import.meta.dirname, '../../out/main/worker.js') })
async function waitAfter(after: number): Promise<number> {
  const running = pool.cutList(
    { request: { text, stockText, kerf: ticks(4), endTrim: ticks(0) }, book: SAMPLE_BOOK },
    { task: `stop after ${after}` },
  )
  await new Promise((resolve) => setTimeout(resolve, after))
  const asked = performance.now()
  const ran = pool.stop(`stop after ${after}`)
  const answer = await running
  const waited = performance.now() - asked
  const plan = answer.ok ? answer.result.plans[0]?.plan : undefined
  const says =
    plan === undefined
      ? JSON.stringify(answer).slice(0, 200)
      : `${plan.status}, ${plan.boards.length} boards, gap ${plan.gap} cents`
  process.stdout.write(
    `stopped after ${after} ms: ${ran ? 'answer' : 'was done'} ${waited.toFixed(0)} ms later, ${says}\n`,
  )
  return waited
}

const waits: number[] = []
for (const after of AFTER_A_SECOND) waits.push(await waitAfter(after))
const sorted = waits.toSorted((a, b) => a - b)
const middle = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
const worst = sorted.at(-1) ?? Number.NaN
process.stdout.write(
  `${waits.length} stops after a second or more: median ${middle.toFixed(0)} ms, first ${waits[0]?.toFixed(0)} ms, worst ${worst.toFixed(0)} ms, target ${TARGET} ms${worst > TARGET ? ', missed' : ''}\n`,
)
for (const after of AT_ONCE) await waitAfter(after)
await pool.close()
