import type { Member } from '../frame/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import { inches } from '../units/index.ts'

/** A joist's end this near an edge runs into the board along it: two plies of rim and something over. */
const NEAR = inches(4)

/** The upper edges of an edge's own joists lie no further under its surface: those of other levels do. */
const BOARDS = inches(2)

/** Centres of the joists that run squarely into an edge, along it from its near end; none where they lie beside it. */
export function joistsInto(members: readonly Member[], edge: DeckEdge): readonly number[] {
  const { near, far, out, length } = edge
  const level = Math.abs(out.x) < 1e-9
  if (!level && Math.abs(out.y) > 1e-9) return []
  const found = members.flatMap(({ role, box }) => {
    if (role !== 'joist' && role !== 'end joist' && role !== 'landing joist') return []
    if (box.z1 > edge.top || box.z1 < edge.top - BOARDS) return []
    const away = box.y1 - box.y0 > box.x1 - box.x0
    if (away !== level) return []
    const ends = level ? [box.y0, box.y1] : [box.x0, box.x1]
    const at = level ? near.y : near.x
    if (!ends.some((end) => Math.abs(end - at) <= NEAR)) return []
    const centre = level ? (box.x0 + box.x1) / 2 - near.x : (box.y0 + box.y1) / 2 - near.y
    const along = centre * (level ? Math.sign(far.x - near.x) : Math.sign(far.y - near.y))
    return along > 0 && along < length ? [along] : []
  })
  return found.toSorted((a, b) => a - b)
}
