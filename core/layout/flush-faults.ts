import { sectionOf } from '../data/index.ts'
import { edgeAt } from '../geometry/index.ts'
import { edgeLengthList, type Fault, type Job } from '../job/index.ts'
import { inches, printInches } from '../units/index.ts'
import type { Zone } from './types.ts'
import { beamAt, type ZoneView, zoneView } from './zone-view.ts'

type Side = 'front' | 'rear'

interface Seen {
  readonly supports: Zone['supports']
  readonly view: ZoneView
}

/** What keeps a beam from standing between the joists. */
export function flushFaults(
  job: Job,
  zones: readonly Pick<Zone, 'id' | 'joists' | 'edges' | 'supports'>[],
): readonly Fault[] {
  const lines = zones.flatMap(({ supports }) => supports).filter(({ flush }) => flush)
  if (lines.length === 0) return []
  const seen = zones.map((zone): Seen => ({ supports: zone.supports, view: zoneView(job, zone) }))
  const sides = [...new Set(lines.flatMap(({ beam }) => beam ?? []))]
  return [
    ...sides.flatMap((side) => shallow(job, side)),
    ...sides.flatMap((side) => slanting(side, seen)),
    ...setbacks(job, seen),
    ...middle(seen),
    ...seams(seen),
    ...(lines.some(({ beam, seam }) => beam === 'rear' && !seam) && job.site.attachment === 'freestanding'
      ? [
          {
            path: 'frame.beams.rear.set',
            message: 'the posts of a flush rear beam would stand out past the deck’s edge, in the house wall',
            fix: 'drop the rear beam, which then stands back from the wall',
          },
        ]
      : []),
  ]
}

/** Joists deeper than the beam would show below what they hang from. */
function shallow({ frame }: Job, side: Side): readonly Fault[] {
  const [beam, joist] = [sectionOf(frame.beams[side].size).depth, sectionOf(frame.joists.size).depth]
  if (beam >= joist) return []
  return [
    {
      path: `frame.beams.${side}.size`,
      message: `joists ${printInches(joist)} deep cannot hang from a flush beam of ${printInches(beam)}`,
      fix: `take a beam as deep as the joists at least, ${frame.joists.size}`,
    },
  ]
}

function slanting(side: Side, seen: readonly Seen[]): readonly Fault[] {
  const leans = seen.some(({ view }) =>
    view.edges.some((met) => {
      const { from, to } = met.edge
      return met.board === 'flush beam' && beamAt(met) === side && from.x !== to.x && from.y !== to.y
    }),
  )
  if (!leans) return []
  return [
    {
      path: `frame.beams.${side}.set`,
      message: 'an edge at an angle has no flush beam here: the joists would hang from it askew',
      fix: 'drop the beam, or make that edge square to the joists',
    },
  ]
}

/** What boards along an edge and a joist's seat need beside a flush middle beam: common practice, no source. */
const ROOM = inches(12)

/** A flush middle beam goes from side to side of its part, and no edge ends joists within a foot of it. */
function middle(seen: readonly Seen[]): readonly Fault[] {
  const wrong = seen.some(({ supports, view: { polygon, edges, turned } }) => {
    return supports
      .filter(({ flush, edge }) => flush && edge < 0)
      .some(({ line }) => {
        const [from, to] = [turned(line.from), turned(line.to)]
        const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)]
        const isSide = (x: number) =>
          edges.some(({ role }, i) => {
            const [a, b] = [polygon[i], polygon[(i + 1) % polygon.length]]
            if (role !== 'side' || a === undefined || b === undefined || Math.abs(a.x - x) > 1) return false
            return Math.min(a.y, b.y) <= from.y && from.y <= Math.max(a.y, b.y)
          })
        const near = polygon.some(
          ({ x, y }) => Math.abs(y - from.y) < ROOM && x >= left - 1 && x <= right + 1,
        )
        return near || !isSide(left) || !isSide(right)
      })
  })
  if (!wrong) return []
  return [
    {
      path: 'shape.middleBeams',
      message:
        'a flush middle beam ends at an edge at an angle, or a corner of the outline lies within 1 ft of it',
      fix: 'drop it, or let it lie between two sides along the joists, 1 ft or more from every corner',
    },
  ]
}

/** A flush beam where parts meet goes from side to side of both, or on in line with their edges. */
function seams(seen: readonly Seen[]): readonly Fault[] {
  const wrong = seen.some(({ view: { polygon, edges } }) =>
    edges.some(({ board, edge: { kind } }, i) => {
      if (kind !== 'seam' || board !== 'flush beam') return false
      return [i - 1, i + 1].some((k) => {
        const at = (k + edges.length) % edges.length
        const [own, beside] = [edgeAt(polygon, i), edgeAt(polygon, at)]
        const inLine = own.from.y === own.to.y && beside.from.y === beside.to.y
        return edges[at]?.role !== 'side' && !inLine
      })
    }),
  )
  if (!wrong) return []
  return [
    {
      path: 'shape.seams',
      message: 'a flush beam where two parts meet ends at an edge at an angle',
      fix: 'let the parts meet between sides along their joists, or choose another seam',
    },
  ]
}

/** A setback stated for an edge whose beam has none. */
function setbacks(job: Job, seen: readonly Seen[]): readonly Fault[] {
  const flush = new Set(
    seen.flatMap(({ view }) =>
      view.edges.flatMap(({ board, edge }) => (board === 'flush beam' ? [edge.number] : [])),
    ),
  )
  const stated = edgeLengthList(job.shape.setbacks).find(({ edge }) => flush.has(edge))
  if (stated === undefined) return []
  return [
    {
      path: 'shape.setbacks',
      message: `the beam at edge ${stated.edge} is flush, and a flush beam has no setback`,
      fix: 'leave that edge out, or drop the beam',
    },
  ]
}
