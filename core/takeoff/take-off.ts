import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { boardFeetOf } from './board-feet.ts'
import { deckScrews } from './deck-screws.ts'
import { groundGoods } from './ground-goods.ts'
import { hardwareOf } from './hardware.ts'
import { ledgerFasteners } from './ledger-fasteners.ts'
import { lumberWeight } from './lumber-weight.ts'
import { nailsOf } from './nails.ts'
import { otherGoods } from './other-goods.ts'
import { piecesOf } from './pieces.ts'
import { tallyGoods, tallyTasks } from './tally.ts'
import { tasksOf } from './tasks.ts'
import type { Takeoff } from './types.ts'
import { volumesOf } from './volumes.ts'

/** Counts everything a frame asks for: pieces and runs to cut, goods, volumes and work, each with its cause. */
export function takeOff(job: Job, frame: Frame): Takeoff {
  const volumes = volumesOf(job, frame)
  return {
    pieces: piecesOf(job, frame),
    runs: frame.runs,
    goods: tallyGoods([
      ...hardwareOf(frame),
      ...ledgerFasteners(job, frame),
      ...nailsOf(frame),
      ...deckScrews(job, frame),
      ...groundGoods(job, frame, volumes),
      ...otherGoods(job, frame),
    ]),
    tasks: tallyTasks(tasksOf(job, frame, volumes)),
    volumes,
    boardFeet: boardFeetOf(frame.members),
    weight: lumberWeight(frame.members),
  }
}
