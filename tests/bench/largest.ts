import { readFileSync } from 'node:fs'
import { planCuts } from '../../core/cutting/index.ts'
import { cutJobs, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { designed } from '../fixtures/designed.ts'
import { calibrate, medianTime } from './calibration.ts'
import { firstPlans } from './deck.ts'

/** The largest deck of the catalogue: 1,200 sq ft, three levels, two stairs, guards all round. */
const file = new URL('../fixtures/catalogue/largest.json', import.meta.url)
const { job } = JSON.parse(readFileSync(file, 'utf8'))
const engine = await loadHighs()
const unit = calibrate()

function print(what: string, time: { clock: number; processor: number }, target: number): void {
  const missed = time.clock > target ? ', missed' : ''
  process.stdout.write(
    `${what.padEnd(44)}${time.clock.toFixed(0).padStart(6)} ms${time.processor.toFixed(0).padStart(8)} ms${(time.processor / unit.processor).toFixed(1).padStart(8)}   target ${target} ms${missed}\n`,
  )
}

process.stdout.write(
  `Largest deck, ${engine.name}. Clock, processor, processor ÷ calibration loop of ${unit.processor.toFixed(1)} ms\n`,
)
// the first time is a fresh program's, with its code not compiled yet
print(
  'job to takeoff, first of the program',
  medianTime(1, () => designed(job)),
  200,
)
const takeoff = medianTime(15, () => designed(job))
print('job to takeoff, median of 15', takeoff, 200)
const first = medianTime(9, () => firstPlans(job, engine))
const more = { clock: first.clock - takeoff.clock, processor: first.processor - takeoff.processor }
print('first audited plans more, median of 9', more, 150)

const classes = cutJobs(designed(job), SAMPLE_BOOK).classes
for (const { cutJob } of classes) {
  let status = ''
  const time = medianTime(1, () => {
    const plan = planCuts(cutJob, engine)
    status = plan.ok ? plan.value.status : plan.error.message
  })
  print(`${cutJob.label}, ${status}`, time, 5000)
}
