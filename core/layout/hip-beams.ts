import { turn } from '../geometry/index.ts'
import type { Fault } from '../job/index.ts'
import type { SupportLine, Zone } from './types.ts'

type Supported = Pick<Zone, 'supports' | 'edges'>

/** Beams that end at a hip, each with the one of the other part that it meets there. */
export function withMitres<Z extends Supported>(zones: readonly Z[]): readonly Z[] {
  const all = zones.flatMap(({ supports }) => supports)
  return zones.map((zone) => ({
    ...zone,
    supports: zone.supports.map((line) => {
      const cut = (end: 0 | 1): SupportLine['cuts'][number] => {
        const own = line.cuts[end]
        if (own === null || own.meets !== null) return own
        return { ...own, meets: partnerOf(line, end, all)?.id ?? null }
      }
      return { ...line, cuts: [cut(0), cut(1)] as const }
    }),
  }))
}

/** What keeps a deck that asks for a hip from having one; it stands on the post where the beams of both parts meet. */
export function hipFaults(zones: readonly Supported[]): readonly Fault[] {
  const at = (message: string, fix: string): readonly Fault[] => [{ path: 'shape.seams', message, fix }]
  if (!zones.some(({ edges }) => edges.some(({ seam }) => seam === 'hip'))) {
    return at(
      'no two parts with joists of two ways meet at an inside corner with wings of one depth: there is no place for a hip',
      'state the part that is framed the other way up to the inside corner, make both wings equally deep, or choose another seam',
    )
  }
  const cuts = zones.flatMap(({ edges, supports }) =>
    edges.some(({ seam }) => seam === 'hip') ? supports.flatMap((line) => line.cuts) : [],
  )
  const ends = cuts.filter((cut) => cut !== null)
  if (ends.length > 0 && ends.every(({ meets }) => meets !== null)) return []
  return at(
    'the beams of the two parts do not meet under the hip',
    'set both beams dropped, and as far from their edges, or choose another seam',
  )
}

/** The beam that ends at the same place on the other side of the cut: of two on one side neither ends at the other. */
function partnerOf(
  { line, cuts }: SupportLine,
  end: 0 | 1,
  all: readonly SupportLine[],
): SupportLine | undefined {
  const ends = [line.from, line.to] as const
  const [place, away] = [ends[end], ends[1 - end]]
  const cut = cuts[end]?.cut
  if (cut === undefined || away === undefined) return undefined
  const side = turn(cut.from, cut.to, away)
  return all.find((other) => {
    const [from, to] = [other.line.from, other.line.to]
    return (
      other.kind === 'beam' &&
      ([0, 1] as const).some((far) => {
        const [there, beyond] = far === 0 ? [from, to] : [to, from]
        const near = Math.hypot(there.x - place.x, there.y - place.y) <= 1
        return other.cuts[far] !== null && near && turn(cut.from, cut.to, beyond) * side < 0
      })
    )
  })
}
