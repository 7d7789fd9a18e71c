import type { Job } from '../job/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import type { Footing, Post } from './types.ts'

/** Least depth of a footing under undisturbed ground, IRC 2021 R403.1.4: 12 in. */
const LEAST_DEPTH = inches(12)

/** Depth of the bottom of everything under the ground: the frost depth, never less than 12 in. */
export function footingDepth(job: Job): Ticks {
  return ticks(Math.max(job.site.frostDepth, LEAST_DEPTH))
}

/** The footing under a post: tube length = depth + projection, less a base's thickness. */
export function footingUnder(job: Job, post: Post): Footing {
  const depth = footingDepth(job)
  const { tube, base, projection } = job.ground
  const baseThickness = base > 0 ? job.ground.baseThickness : ticks(0)
  return {
    id: post.id.replace('post', 'footing'),
    postId: post.id,
    number: post.number,
    x: post.x,
    y: post.y,
    tube,
    tubeLength: ticks(depth + projection - baseThickness),
    base,
    baseThickness,
    depth,
    holeDiameter: ticks(Math.max(tube, base) + job.ground.holeRoom),
    ground: post.ground,
    topOfConcrete: post.ground + projection,
    cause: {
      fields: [
        'site.frostDepth',
        'ground.tube',
        'ground.base',
        'ground.baseThickness',
        'ground.projection',
        'ground.holeRoom',
      ],
      ids: [post.id],
      rule: 'Bottom at the frost depth or deeper, 12 in at least (IRC 2021 R403.1.4); tube = depth + projection − base',
    },
  }
}
