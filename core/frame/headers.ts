import type { Job } from '../job/index.ts'
import type { ZoneView } from '../layout/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { placedBoard } from './footprint.ts'
import { headerIds, OPENING_PLIES, type ViewOpening } from './joist-places.ts'
import type { PlacedJoist } from './joists.ts'
import type { Member } from './types.ts'

/** Headers before and after each opening of a zone, between its trimmers; ply 1 is the one that joists hang from. */
export function frameHeaders(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  openings: readonly ViewOpening[],
  joists: readonly PlacedJoist[],
): readonly Member[] {
  const { thickness } = d.joist
  return openings.flatMap((opening) => {
    const trimmers = joists
      .filter(
        ({ place, from, to }) =>
          place.trimmer &&
          from < opening.y1 &&
          to > opening.y0 &&
          (Math.abs(place.centre - opening.x0) < OPENING_PLIES * thickness ||
            Math.abs(place.centre - opening.x1) < OPENING_PLIES * thickness),
      )
      .map(({ member }) => member.id)
    return headerIds(opening).flatMap((id, side) =>
      Array.from({ length: OPENING_PLIES }, (_, ply): Member => {
        const off = (OPENING_PLIES - ply) * thickness
        const y0 = side === 0 ? opening.y0 - off : opening.y1 + off - thickness
        return {
          id: `${id}-${ply + 1}`,
          mark: `H${opening.number}${side === 0 ? 'a' : 'b'}-${ply + 1}`,
          role: 'header',
          product: productOf(job, d.joist.size),
          ripTo: null,
          ...placedBoard(
            view,
            [
              { x: opening.x0, y: y0 },
              { x: opening.x1, y: y0 },
              { x: opening.x1, y: y0 + thickness },
              { x: opening.x0, y: y0 + thickness },
            ],
            { z0: d.joistBottom, z1: d.joistTop },
          ),
          bearings: trimmers,
          cause: {
            fields: ['shape.openings', 'frame.joists.size'],
            ids: trimmers,
            rule: 'Length = width of the opening: it hangs between the doubled trimmers (IRC 2021 R502.10, for floors)',
          },
        }
      }),
    )
  })
}
