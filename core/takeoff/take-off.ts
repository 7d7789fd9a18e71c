import type { Frame } from '../frame/index.ts'
import { runsClearOfPosts } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import { type Additions, NO_ADDITIONS, withAdditions } from './additions.ts'
import { boardFeetOf } from './board-feet.ts'
import { clearing } from './clearing.ts'
import { underConditions } from './conditions.ts'
import { deckScrews } from './deck-screws.ts'
import { deckingForecast } from './decking-forecast.ts'
import { finishTasks } from './finish-tasks.ts'
import { foundGoods, foundTasks } from './found-work.ts'
import { groundGoods } from './ground-goods.ts'
import { guardGoods } from './guard-goods.ts'
import { guardTasks } from './guard-tasks.ts'
import { hardwareOf } from './hardware.ts'
import { ledgerFasteners } from './ledger-fasteners.ts'
import { lumberWeight } from './lumber-weight.ts'
import { nailsOf } from './nails.ts'
import { otherGoods } from './other-goods.ts'
import { piecesOf } from './pieces.ts'
import { skirtingGoods, skirtingTasks } from './skirting.ts'
import { stairGoods } from './stair-goods.ts'
import { stairTasks } from './stair-tasks.ts'
import { stepGoods, stepTasks } from './step-goods.ts'
import { tallyGoods, tallyTasks } from './tally.ts'
import { tasksOf } from './tasks.ts'
import type { Takeoff } from './types.ts'
import { volumesOf } from './volumes.ts'
import { deliveryGoods, finishGoods, surfacesOf } from './work-goods.ts'

/** Counts everything a frame and what stands on it asks for: pieces and runs to cut, goods, volumes and work, each with its cause. */
export function takeOff(job: Job, frame: Frame, additions: Additions = NO_ADDITIONS): Takeoff {
  const { stairs, guard } = additions
  const volumes = volumesOf(job, frame, stairs)
  const whole = withAdditions(job, frame, additions)
  const surfaces = surfacesOf(job, frame, stairs, guard)
  const cleared = clearing(job, volumes)
  const weight = lumberWeight(whole.members)
  const goods = tallyGoods([
    ...hardwareOf(whole),
    ...ledgerFasteners(job, frame),
    ...nailsOf(whole),
    ...deckScrews(job, frame),
    ...skirtingGoods(job, frame),
    ...groundGoods(job, frame, volumes),
    ...foundGoods(job, frame),
    ...otherGoods(job, whole),
    ...stepGoods(frame),
    ...stairs.flatMap((one) => stairGoods(job, one)),
    ...guardGoods(job, guard),
    ...finishGoods(job, frame, surfaces),
    ...cleared.goods,
  ])
  const tasks = tallyTasks([
    ...cleared.tasks,
    ...tasksOf(job, whole, volumes),
    ...foundTasks(job, frame),
    ...stepTasks(frame),
    ...stairs.flatMap((one) => stairTasks(job, one)),
    ...guardTasks(job, guard),
    ...skirtingTasks(job, frame),
    ...finishTasks(job, frame, surfaces),
  ])
  const delivered = deliveryGoods(job, whole, weight.freshlyTreated, goods)
  return {
    pieces: piecesOf(job, whole),
    runs: runsClearOfPosts(job, frame, guard),
    goods: delivered.length === 0 ? goods : [...goods, ...tallyGoods(delivered)],
    tasks: underConditions(job, frame, tasks),
    decking: deckingForecast(job, frame),
    volumes,
    boardFeet: boardFeetOf(whole.members),
    weight,
  }
}
