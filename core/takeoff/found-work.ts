import { besideBeam, type Footing, type Frame } from '../frame/index.ts'
import { type Job, type Settled, settledList } from '../job/index.ts'
import { TICKS_PER_FOOT } from '../units/index.ts'
import type { GoodShare, TaskShare } from './tally.ts'
import { digRate } from './tasks.ts'

/** Work at holes that were found off: what is dug and filled once more, anchors drilled anew. */
export function foundTasks(job: Job, frame: Frame): readonly TaskShare[] {
  return entries(job, frame).flatMap(({ settled, footing, cause }) => {
    if (settled.way === 'drill the anchor anew')
      return ['wetset-bolt', 'post-base-wet'].map((rateId) => ({ rateId, quantity: 1, cause }))
    const dug = dugAnew(settled, frame, footing)
    return [digRate(job, footing.holeDiameter), 'backfill-tamp'].map((rateId) => ({
      rateId,
      quantity: dug,
      cause,
    }))
  })
}

/** What is bought for it: an anchor where one is drilled anew. */
export function foundGoods(job: Job, frame: Frame): readonly GoodShare[] {
  return entries(job, frame).flatMap(({ settled, cause }) =>
    settled.way === 'drill the anchor anew' ? [{ sku: 'anchor-bolt-1/2', quantity: 1, cause }] : [],
  )
}

function entries(job: Job, frame: Frame) {
  return settledList(job.ground.found).flatMap((settled) => {
    const footing = frame.footings.find(({ number }) => number === settled.post)
    if (footing === undefined) return []
    const cause = {
      fields: ['ground.found'],
      ids: [footing.id],
      rule: `Hole ${settled.post} was found off: ${settled.way}`,
    }
    return [{ settled, footing, cause }]
  })
}

/** Cubic feet that are dug, and filled, beyond the hole itself. */
function dugAnew({ way, dx, dy }: Settled, frame: Frame, footing: Footing): number {
  switch (way) {
    case 'keep':
    case 'drill the anchor anew':
      return 0
    case 'move along the beam':
      return widened(footing, Math.abs(acrossBeam(frame, footing, { dx, dy })))
    case 'shift the base':
      return widened(footing, Math.hypot(dx, dy))
    case 'dig again':
      return cubicFeet((Math.PI / 4) * footing.holeDiameter ** 2 * footing.depth)
  }
}

function acrossBeam(frame: Frame, { postId }: Footing, off: Pick<Settled, 'dx' | 'dy'>): number {
  const post = frame.posts.find(({ id }) => id === postId)
  return post === undefined ? 0 : besideBeam(frame, post.beamId, off).across
}

/** A hole widened by a distance on one side. */
function widened(footing: Footing, by: number): number {
  return cubicFeet(footing.holeDiameter * by * footing.depth)
}

function cubicFeet(cubicTicks: number): number {
  return cubicTicks / TICKS_PER_FOOT ** 3
}
