import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { TaskShare } from './tally.ts'
import { type Surfaces, tapeFeet } from './work-goods.ts'

/** The rates for staining are those of two coats. */
const RATED_COATS = 2

/** Taping, staining and covering the ground, where the job asks for them. */
export function finishTasks(job: Job, frame: Frame, surfaces: Surfaces): readonly TaskShare[] {
  const { joistTape, coating, groundCover } = job.work
  const coats = coating / RATED_COATS
  const task = (rateId: string, quantity: number, field: string, rule: string): TaskShare => ({
    rateId,
    quantity,
    cause: { fields: [field], ids: [], rule },
  })
  const often = `${coating} coats, the rate is for two`
  return [
    task('groundcover', groundCover ? frame.areaSquareFeet : 0, 'work.groundCover', 'Area of the deck'),
    task('joist-tape', joistTape ? tapeFeet(frame) : 0, 'work.joistTape', 'Length of joists, rims and plies'),
    task('stain-floor', coats * surfaces.floor, 'work.coating', `Area of the floor; ${often}`),
    task('stain-steps', coats * surfaces.steps, 'work.coating', `Treads and risers; ${often}`),
    task('stain-rail', coats * surfaces.guard, 'work.coating', `Length of the guard; ${often}`),
  ]
}
