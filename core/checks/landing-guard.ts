import { IRC_LIMITS } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt } from '../layout/index.ts'
import type { Platform } from '../stairs/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'

/** Greatest drop from a landing to the ground within 36 in of it, at its corners and beyond them, rounded up. */
export function dropFromLanding(
  job: Job,
  {
    corner,
    down,
    across,
    depth,
    width,
    level,
  }: Pick<Platform, 'corner' | 'down' | 'across' | 'depth' | 'width' | 'level'>,
): Ticks {
  const reach = inches(IRC_LIMITS.guardReach.value)
  const grounds = [-reach, 0, depth, depth + reach].flatMap((along) =>
    [-reach, 0, width, width + reach].map((aside) =>
      groundAt(
        job,
        corner.x + along * down.x + aside * across.x,
        corner.y + along * down.y + aside * across.y,
      ),
    ),
  )
  return ticks(Math.ceil(level - Math.min(...grounds)))
}
