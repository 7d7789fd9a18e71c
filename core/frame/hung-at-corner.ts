import type { JoistPlace } from './joist-places.ts'
import type { JoistSupport } from './types.ts'

/** A joist reaches past a beam by a quarter of its span behind it at most: IRC 2021 R507.6. */
const MOST_BEYOND = 1 / 4

/**
 * Joists that hang from a hip and reach past their beam too far, or to no beam, hang from the rim as well, which carries
 * them on; that they may lie on the beam is not counted on (common practice, no source).
 */
export function hungAtCorner(
  { part, startsAt, endsAt }: JoistPlace,
  supports: readonly JoistSupport[],
  boards: ReadonlyMap<number, string>,
): readonly JoistSupport[] {
  const [hip] = supports.filter(({ kind }) => kind === 'header')
  const atEnd = startsAt?.board === 'hip'
  const edge = atEnd ? endsAt : startsAt
  const rim = edge?.board === 'rim' && !edge.steep ? boards.get(edge.index) : undefined
  if (hip === undefined || rim === undefined || (!atEnd && endsAt?.board !== 'hip')) return supports
  // as far as the rim's outer face, as the load reaches
  const face = (edge?.width ?? 0) * (atEnd ? 1 : -1)
  const at = atEnd ? Math.min(part.left.high, part.right.high) : Math.max(part.left.low, part.right.low)
  const beams = supports.filter((one) => one !== hip)
  const last = atEnd ? beams.at(-1) : beams[0]
  const before = atEnd ? (beams.at(-2) ?? hip) : (beams[1] ?? hip)
  const holds =
    last !== undefined &&
    Math.abs(at + face - last.at) <= (Math.abs(last.at - before.at) - last.half) * MOST_BEYOND
  if (holds) return supports
  const held: JoistSupport = { id: rim, kind: 'header', at, half: 0, skew: 0, seat: 'hung' }
  const kept = supports.filter((one) => one !== last)
  return atEnd ? [...kept, held] : [held, ...kept]
}
