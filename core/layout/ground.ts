import type { Job } from '../job/index.ts'

/**
 * Ground above the datum at a place, in ticks, not rounded.
 * A plane falls by its stated amounts; spot heights are weighted by the inverse square of their distance,
 * and at a spot its own height is the answer.
 */
export function groundAt(job: Job, x: number, y: number): number {
  const ground = job.site.ground
  if (ground.kind === 'plane') {
    return 0 - (ground.along.fall * x) / ground.along.over - (ground.away.fall * y) / ground.away.over
  }
  let weights = 0
  let weighted = 0
  for (const spot of ground.spots) {
    const distanceSquared = (spot.x - x) ** 2 + (spot.y - y) ** 2
    if (distanceSquared === 0) return spot.z
    weights += 1 / distanceSquared
    weighted += spot.z / distanceSquared
  }
  return weighted / weights
}
