import type { Job } from '../job/index.ts'
import { nearestSixteenth, type Ticks } from '../units/index.ts'

/** Where one hole's centre is, and the two diagonals that prove it. */
export interface HoleSetOut {
  readonly footingId: string
  readonly number: number
  /** from the deck's left end along the wall, nearest 1/16 in: under a beam at an angle a post need not stand on one */
  readonly along: Ticks
  /** square from the wall, nearest 1/16 in */
  readonly fromWall: Ticks
  /** from the deck's left and right corner at the wall, nearest 1/16 in, measured level */
  readonly fromLeftCorner: Ticks
  readonly fromRightCorner: Ticks
}

/** What has a centre to set out; ticks, not always whole. */
interface Centred {
  readonly id: string
  readonly number: number
  readonly x: number
  readonly y: number
}

/** Set-out of every hole, in the order of their numbers. Freestanding, the wall is the rear rim's outer face. */
export function holeSetOut(
  { footings }: { readonly footings: readonly Centred[] },
  job: Job,
): readonly HoleSetOut[] {
  return footings.map((footing) => ({
    footingId: footing.id,
    number: footing.number,
    along: nearestSixteenth(footing.x),
    fromWall: nearestSixteenth(footing.y),
    fromLeftCorner: diagonal(footing.x, footing.y),
    fromRightCorner: diagonal(job.size.width - footing.x, footing.y),
  }))
}

/** Level diagonal of a right angle, nearest 1/16 in. */
export function diagonal(along: number, away: number): Ticks {
  return nearestSixteenth(Math.sqrt(along ** 2 + away ** 2))
}
