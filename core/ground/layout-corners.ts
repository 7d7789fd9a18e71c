import type { Design } from '../estimate-types.ts'
import { diagonal } from '../frame/index.ts'
import { isRectangle } from '../job/index.ts'
import type { Ticks } from '../units/index.ts'
import { sightOf } from './sight.ts'
import { isBeforeOneWall, type Tie, tiesTo } from './wall-ties.ts'

/** Where a corner of the frame is, and the two diagonals that prove it. */
export interface CornerSetOut {
  /** as the corners are listed in the job, from 1 */
  readonly number: number
  /** from the deck's left end along the wall */
  readonly along: Ticks
  /** square from the wall */
  readonly fromWall: Ticks
  /** from the deck's left and right corner at the wall, nearest 1/16 in, measured level */
  readonly fromLeftCorner: Ticks
  readonly fromRightCorner: Ticks
  /** where the deck goes around the house: from its corners in sight; none for a corner at the house, and else */
  readonly ties: readonly Tie[]
}

/**
 * The corners of an outline that is no rectangle, and those of every level where there are several, each proved by two
 * diagonals as the holes are: the strings over the frame's edges cross over none of those that lie farther in. None for a
 * rectangle, whose long diagonals prove it.
 */
export function layoutCorners(design: Design): readonly CornerSetOut[] {
  const { job, layout } = design
  if (isRectangle(job)) return []
  const sight = sightOf(layout)
  const around = !isBeforeOneWall(design)
  const isAtHouse = ({ x, y }: { readonly x: number; readonly y: number }): boolean =>
    sight.corners.some((corner) => corner.x === x && corner.y === y)
  return layout.levels
    .flatMap(({ outline, edges }) =>
      // an edge is named by its first corner, whichever way around the corners were listed
      outline.map(({ x, y }, i) => ({ x, y, number: edges[i]?.number ?? i + 1 })),
    )
    .map(({ x, y, number }) => ({
      number,
      along: x,
      fromWall: y,
      fromLeftCorner: diagonal(x, y),
      fromRightCorner: diagonal(job.size.width - x, y),
      ties: around && !isAtHouse({ x, y }) ? tiesTo({ x, y }, sight) : [],
    }))
    .sort((a, b) => a.number - b.number)
}
