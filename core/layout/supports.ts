import { sectionOf } from '../data/index.ts'
import {
  bandAlong,
  edgeAt,
  lengthOf,
  type PlanePoint,
  type Polygon,
  partsInside,
  type Segment,
  turn,
} from '../geometry/index.ts'
import { edgeLengthList, isRectangle, type Job, middleBeamList } from '../job/index.ts'
import { feet, type Ticks, ticks } from '../units/index.ts'
import { type BeamLine, beamLines, squareInside } from './beam-lines.ts'
import { beamThickness } from './beam-on-post.ts'
import { openSetback, type Stop } from './open-setback.ts'
import { openingsOf } from './openings.ts'
import type { SupportLine, Zone, ZoneEdge } from './types.ts'
import { beamAt, boardEnds, type ZoneView, zoneView } from './zone-view.ts'

type Bare = Pick<Zone, 'id' | 'joists' | 'edges'>

/** Names of the lines of a deck, each used once: front, front-b, front-c. */
export class LineNames {
  readonly #used = new Map<string, number>()

  next(name: string): string {
    const count = (this.#used.get(name) ?? 0) + 1
    this.#used.set(name, count)
    return count === 1 ? name : `${name}-${letters(count)}`
  }
}

/** 1: a, 26: z, 27: aa. */
function letters(count: number): string {
  const last = String.fromCharCode(97 + ((count - 1) % 26))
  return count <= 26 ? last : `${letters(Math.floor((count - 1) / 26))}${last}`
}

/**
 * The lines that carry a zone's joists: where they start, from left to right, then where they end.
 * @param outline of the zone's level
 */
export function supportLines(
  job: Job,
  zone: Bare,
  outline: Polygon,
  names: LineNames,
): readonly SupportLine[] {
  const view = zoneView(job, zone)
  return [
    ...ledgers(view, names),
    ...beamsOf(job, view, outline, 'rear', names),
    ...beamsOf(job, view, outline, 'front', names),
    ...flushBeams(view, names),
    ...middleBeams(job, view, names),
  ]
}

function ledgers(view: ZoneView, names: LineNames): readonly SupportLine[] {
  const along = view.edges.flatMap((edge, index) => (edge.board === 'ledger' ? [{ edge, index }] : []))
  const lines = along.map(({ edge, index }) => {
    const [, , innerEnd, innerStart] = bandAlong(view.polygon, index, [0, edge.width], boardEnds(view, index))
    return { edge: edge.index, line: leftToRight({ from: innerStart, to: innerEnd }) }
  })
  return lines
    .sort((a, b) => a.line.from.x - b.line.from.x || a.line.from.y - b.line.from.y)
    .map(({ edge, line }) => {
      const id = names.next('ledger')
      return {
        ...placed(view, line),
        id,
        kind: 'ledger',
        beam: null,
        key: id,
        flush: false,
        seam: false,
        cuts: [null, null],
        edge,
      }
    })
}

/** Beams of one side; the rear ones are found as the front ones are, in the mirror. */
function beamsOf(
  job: Job,
  view: ZoneView,
  outline: Polygon,
  beam: 'front' | 'rear',
  names: LineNames,
): readonly SupportLine[] {
  const sign = beam === 'front' ? 1 : -1
  const count = view.polygon.length
  const mirror = ({ x, y }: PlanePoint): PlanePoint => ({ x, y: sign * y })
  const polygon = beam === 'front' ? view.polygon : view.polygon.map(mirror).reverse()
  // corner i of the mirrored polygon is corner count - 1 - i, so its edge i is edge count - 2 - i
  const indexOf = (i: number) => (beam === 'front' ? i : (2 * count - 2 - i) % count)
  const role = beam === 'front' ? 'foot' : 'head'
  const edgeOf = (i: number) => view.edges[indexOf(i)]
  const spec = job.frame.beams[beam]
  const half = beamThickness(spec) / 2
  const stated = new Map(edgeLengthList(job.shape.setbacks).map(({ edge, length }) => [edge, length]))
  const rim = sectionOf(job.frame.joists.size).thickness * job.frame.rimPlies
  const stops = stopsOf(job, view, sign)
  const open = beamLines(polygon, (i) => edgeOf(i)?.role === role && edgeOf(i)?.board === 'rim', {
    setback: (i) => setbackAt(i),
    half,
    rim,
    within: polygon,
    isMitred: (end) => cutAtHip(view, mirror(end)) !== null,
  })
  const underSeams = job.shape.seams === 'flush' ? [] : (['own beam', 'shared beam'] as const)
  const seams = underSeams.flatMap((seam) =>
    beamLines(polygon, (i) => edgeOf(i)?.role === role && edgeOf(i)?.edge.seam === seam, {
      setback: () => (seam === 'own beam' ? half : 0),
      half,
      rim: 0,
      // half of a shared one is in the other part
      within: outline.map((corner) => mirror(view.turned(corner))),
      isMitred: () => false,
    }),
  )
  return named([...open, ...seams]).map(({ found, meets, key }) => {
    const turned = (line: Segment) => ({ from: mirror(line.from), to: mirror(line.to) })
    return {
      ...placed(view, turned(found.line)),
      id: `beam-${key}`,
      kind: 'beam',
      beam,
      key,
      flush: false,
      seam: seams.includes(found),
      cuts: [
        asCut(view, found.cuts[0] && turned(found.cuts[0]), meets[0]) ??
          cutAtHip(view, turned(found.line).from),
        asCut(view, found.cuts[1] && turned(found.cuts[1]), meets[1]) ??
          cutAtHip(view, turned(found.line).to),
      ],
      edge: view.edges[indexOf(found.edge)]?.index ?? 0,
    }
  })

  function setbackAt(i: number): number {
    const edge = edgeOf(i)?.edge
    // flush with the edge, where a lower level's joists hang from its side
    return edge?.seam === 'lower level’s joists' ? half : (stated.get(edge?.number ?? 0) ?? unstated(i))
  }

  function unstated(i: number): Ticks {
    if (spec.setbackStated || isRectangle(job)) return spec.setback
    return openSetback(job, { polygon, edge: i, stops }, spec.setback, half, (behind, setback) => {
      const edge = edgeOf(behind)
      if (edge?.board !== 'rim') return edge?.board === 'none' ? half : (edge?.width ?? 0)
      const other = job.frame.beams[beam === 'front' ? 'rear' : 'front']
      const taken = stated.get(edge.edge.number ?? 0) ?? (other.setbackStated ? other.setback : setback)
      return taken + beamThickness(other) / 2
    })
  }

  function named(lines: readonly BeamLine[]) {
    const keys = lines.map(() => names.next(beam))
    return lines.map((found, i) => ({
      found,
      key: keys[i] ?? beam,
      meets: [
        found.meets[0] ? (keys[i - 1] ?? null) : null,
        found.meets[1] ? (keys[i + 1] ?? null) : null,
      ] as const,
    }))
  }
}

/**
 * Beams in the place of rims, or where parts meet, along the whole of their edges; those at which joists start first,
 * from left to right. One that joists of two parts hang from is the later part's.
 */
function flushBeams(view: ZoneView, names: LineNames): readonly SupportLine[] {
  const along = view.edges.flatMap((edge, index) =>
    edge.board === 'flush beam' && !isTheirs(edge.edge) ? [{ edge, index }] : [],
  )
  const lines = along.map(({ edge, index }) => {
    const middle = edge.edge.seam === 'shared beam' ? 0 : edge.width / 2
    const [start, end] = bandAlong(view.polygon, index, [middle, edge.width], boardEnds(view, index))
    return { edge, line: leftToRight({ from: start, to: end }) }
  })
  return lines
    .sort((a, b) => a.line.from.x - b.line.from.x || a.line.from.y - b.line.from.y)
    .map(({ edge, line }): SupportLine => {
      const beam = beamAt(edge)
      const key = names.next(beam)
      return {
        ...placed(view, line),
        id: `beam-${key}`,
        kind: 'beam',
        beam,
        key,
        flush: true,
        seam: edge.edge.kind === 'seam',
        cuts: [null, null],
        edge: edge.index,
      }
    })
}

/** Whether the beam at an edge is another part's or another level's. */
function isTheirs({ seam }: ZoneEdge): boolean {
  return seam === 'other zone’s beam' || seam === 'higher level’s beam'
}

/** A shorter part of a middle beam's line carries too little to be worth two posts: common practice, no source. */
const LEAST_MIDDLE = feet(4)

/** Beams across the joists at the stated places, as far as they lie in the zone. */
function middleBeams(job: Job, view: ZoneView, names: LineNames): readonly SupportLine[] {
  const xs = view.polygon.map(({ x }) => x)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const half = beamThickness(job.frame.beams.front) / 2
  return middleBeamList(job.shape.middleBeams).flatMap(({ at: y, set }) =>
    partsInside(view.polygon, { from: { x: left, y }, to: { x: right, y } })
      .filter((part) => lengthOf(part) >= LEAST_MIDDLE)
      .flatMap((part) => squareInside(view.polygon, part, half, () => false))
      .filter((part) => lengthOf(part) >= LEAST_MIDDLE - 4 * half)
      .map((line): SupportLine => {
        const key = names.next('middle')
        return {
          ...placed(view, line),
          id: `beam-${key}`,
          kind: 'beam',
          beam: 'front',
          key,
          flush: set === 'flush',
          seam: false,
          cuts: [null, null],
          edge: -1,
        }
      }),
  )
}

/** Headers at openings and middle beams, their faces towards the beams of a side; turned over for the rear ones. */
function stopsOf(job: Job, view: ZoneView, sign: 1 | -1): readonly Stop[] {
  const { thickness } = sectionOf(job.frame.joists.size)
  const holes = openingsOf(job).map(({ x0, y0, x1, y1 }): Stop => {
    const [a, b] = [view.turned({ x: x0, y: y0 }), view.turned({ x: x1, y: y1 })]
    return { x0: a.x, x1: b.x, y: Math.max(sign * a.y, sign * b.y) + 2 * thickness }
  })
  const half = beamThickness(job.frame.beams.front) / 2
  const everywhere = { x0: Number.NEGATIVE_INFINITY, x1: Number.POSITIVE_INFINITY }
  const beams = middleBeamList(job.shape.middleBeams).map(
    ({ at }): Stop => ({ ...everywhere, y: sign * at + half }),
  )
  return [...holes, ...beams]
}

function asCut(view: ZoneView, cut: Segment | null, meets: string | null): SupportLine['cuts'][number] {
  return cut === null
    ? null
    : {
        cut: { from: view.turned(cut.from), to: view.turned(cut.to) },
        meets: meets === null ? null : `beam-${meets}`,
      }
}

/** The mitre of a beam that ends at a hip: along the hip; whom it meets there the parts together say. */
function cutAtHip(view: ZoneView, end: PlanePoint): SupportLine['cuts'][number] {
  const at = view.edges.findIndex(
    ({ board }, i) => board === 'hip' && Math.abs(offLine(edgeAt(view.polygon, i), end)) <= 1,
  )
  if (at < 0) return null
  const { from, to } = edgeAt(view.polygon, at)
  return { cut: { from: view.turned(from), to: view.turned(to) }, meets: null }
}

/** How far a point lies from a line. */
function offLine({ from, to }: Segment, point: PlanePoint): number {
  return turn(from, to, point) / lengthOf({ from, to })
}

function leftToRight(line: Segment): Segment {
  return line.to.x < line.from.x ? { from: line.to, to: line.from } : line
}

/** A line of the view on the plan. */
function placed(view: ZoneView, line: Segment): Pick<SupportLine, 'line' | 'y' | 'from' | 'to'> {
  const from = view.turned(line.from)
  const to = view.turned(line.to)
  return {
    line: { from, to },
    y: ticks(Math.round(from.y)),
    from: ticks(Math.round(from.x)),
    to: ticks(Math.round(to.x)),
  }
}
