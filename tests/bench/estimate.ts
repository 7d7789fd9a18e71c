import { checkFrame } from '../../core/checks/index.ts'
import { compareWidths } from '../../core/compare/index.ts'
import { estimate } from '../../core/estimate.ts'
import { DEMO_JOB } from '../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { sizeIt } from '../../core/sizing/index.ts'
import { feet, inches } from '../../core/units/index.ts'
import { loadHighs } from '../../main/workers/lp/highs.ts'
import { designed } from '../fixtures/designed.ts'
import { calibrate, medianTime, type Time } from './calibration.ts'
import { firstPlans } from './deck.ts'

/** Widths that the tape shows: 18 to 28 ft by 3 in. */
const TAPE = { from: feet(18), to: feet(28), step: inches(3) }

const WIDTHS = 41

const engine = await loadHighs()
const unit = calibrate()

function print(what: string, time: Time, target: number | null): void {
  const says = `${time.clock.toFixed(1)} ms`.padStart(12)
  const worked = `${time.processor.toFixed(1)} ms`.padStart(12)
  const ratio = `${(time.processor / unit.processor).toFixed(2)}`.padStart(9)
  const aim = target === null ? '' : `   target ${target} ms${time.clock > target ? ', missed' : ''}`
  process.stdout.write(`${what.padEnd(36)}${says}${worked}${ratio}${aim}\n`)
}

process.stdout.write(
  `Demo job, ${engine.name}. Medians: clock, processor, processor ÷ calibration loop of ${unit.processor.toFixed(1)} ms\n`,
)
estimate(DEMO_JOB, SAMPLE_BOOK, engine)
print(
  'job to takeoff',
  medianTime(25, () => designed(DEMO_JOB)),
  20,
)
const { job, layout, frame } = designed(DEMO_JOB)
print(
  'checks of the deck',
  medianTime(25, () => checkFrame(job, layout, frame)),
  10,
)
print(
  'first audited plans, all products',
  medianTime(9, () => firstPlans(DEMO_JOB, engine)),
  60,
)
print(
  'whole estimate with its proof',
  medianTime(9, () => estimate(DEMO_JOB, SAMPLE_BOOK, engine)),
  300,
)

print(
  'sizing of the frame',
  medianTime(3, () => sizeIt(DEMO_JOB, SAMPLE_BOOK, engine)),
  2000,
)

let proven = 0
const filled = medianTime(3, () => {
  let rows = 0
  for (const _ of compareWidths(DEMO_JOB, SAMPLE_BOOK, engine, TAPE, { quickFirst: true })) {
    if (++rows === WIDTHS) break
  }
})
print('41 widths, audited with their bound', filled, 4000)
const all = medianTime(1, () => {
  proven = [...compareWidths(DEMO_JOB, SAMPLE_BOOK, engine, TAPE)].filter((row) => row.proven).length
})
print(`41 widths with the proof, ${proven} proven`, all, null)
