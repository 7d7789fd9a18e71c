import { fromAbove, type Member } from '../frame/index.ts'
import { common } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { spotAt } from './deck-edges.ts'
import type { DeckEdge } from './types.ts'

/** Boards are looked at so far in and out from the edge that stairs leave from. */
const NEAR = inches(12)

/** Surfaces that differ by less are one. */
const ONE_LEVEL = 1

/**
 * How far the deck's boards reach over its edge where stairs leave, as they are laid: where a last course is left out they
 * fall short of the overhang that is asked for.
 */
export function deckReach(
  job: Job,
  decking: readonly Member[],
  { edge, place, width }: { readonly edge: DeckEdge; readonly place: number; readonly width: number },
): Ticks {
  const strip = [
    spotAt(edge, place, -NEAR),
    spotAt(edge, place, NEAR),
    spotAt(edge, place + width, NEAR),
    spotAt(edge, place + width, -NEAR),
  ]
  const boards = decking.filter(
    ({ role, box }) => role === 'decking' && Math.abs(box.z1 - edge.top) <= ONE_LEVEL,
  )
  const reached = common(
    boards.map((board) => fromAbove(board)),
    [strip],
  ).flatMap((shape) =>
    shape.map(({ x, y }) => (x - edge.near.x) * edge.out.x + (y - edge.near.y) * edge.out.y),
  )
  return reached.length === 0 ? job.decking.overhang : ticks(Math.round(Math.max(...reached)))
}
