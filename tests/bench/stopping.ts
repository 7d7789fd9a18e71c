import { join } from 'node:path'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { ticks } from '../../core/units/index.ts'
import { createPool } from '../../main/workers/index.ts'

/**
 * How long a person waits for the answer who stops a list that is hard to prove: so many lengths between a sixth and a
 * half of a board that a program of the search takes a second and hears nothing meanwhile.
 */
const LENGTHS = 200
/** The first one also starts the worker. */
const STOP_AFTER = [150, 400, 900, 1600, 2500, 4000]

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
for (const after of STOP_AFTER) {
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
}
await pool.close()
