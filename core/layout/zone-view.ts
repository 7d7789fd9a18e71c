import { sectionOf } from '../data/index.ts'
import type { BandEnd, PlanePoint, Polygon, Segment } from '../geometry/index.ts'
import { edgeAt, lengthOf, turn } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { isSteep } from './beam-lines.ts'
import { beamThickness } from './beam-on-post.ts'
import type { Zone, ZoneEdge } from './types.ts'

/** An edge as the joists meet it: they start at a head, end at a foot, and run beside a side. */
export interface ViewEdge {
  readonly edge: ZoneEdge
  /** index of the edge in the zone */
  readonly index: number
  readonly role: 'head' | 'foot' | 'side'
  readonly board: 'ledger' | 'rim' | 'flush beam' | 'end joist' | 'hip' | 'none'
  /** an open edge that leans more along the joists than across them, or a hip: they hang from its board */
  readonly steep: boolean
  /** thickness of the board along it, all plies */
  readonly width: Ticks
}

/**
 * A zone seen along its joists: x runs across them, y along them, whatever way they run on the plan. The polygon's area
 * is positive.
 */
export interface ZoneView {
  readonly zone: Pick<Zone, 'id' | 'joists'>
  readonly polygon: Polygon
  /** edge i runs from corner i of the polygon to the next */
  readonly edges: readonly ViewEdge[]
  /** from the view to the plan or back: the two are each other's mirror image or the same */
  turned<P extends PlanePoint>(point: P): P
}

export function zoneView(job: Job, zone: Pick<Zone, 'id' | 'joists' | 'edges'>): ZoneView {
  const mirrored = zone.joists === 'along'
  const turned = <P extends PlanePoint>(point: P): P =>
    mirrored ? { ...point, x: point.y, y: point.x } : point
  const placed = zone.edges.map((edge, index) => ({
    edge,
    index,
    from: turned(edge.from),
    to: turned(edge.to),
  }))
  const ordered = mirrored ? placed.map((one) => ({ ...one, from: one.to, to: one.from })).reverse() : placed
  return {
    zone,
    polygon: ordered.map(({ from }) => from),
    edges: ordered.map(({ edge, index, from, to }) => viewEdge(job, edge, index, { from, to })),
    turned,
  }
}

function viewEdge(job: Job, edge: ZoneEdge, index: number, { from, to }: Segment): ViewEdge {
  const role = to.x > from.x ? 'head' : to.x < from.x ? 'foot' : 'side'
  const { thickness } = sectionOf(job.frame.joists.size)
  const board = boardAt(job, edge, role)
  const width = widthOf(job, board, { edge, role }) ?? thickness
  const steep = board === 'hip' || (board === 'rim' && isSteep({ from, to }))
  return { edge, index, role, board, steep, width: ticks(width) }
}

/** Thickness of what is not one board thick; else null. */
function widthOf(
  { frame }: Job,
  board: ViewEdge['board'],
  met: Pick<ViewEdge, 'edge' | 'role'>,
): number | null {
  switch (board) {
    case 'none':
      return 0
    case 'rim':
      return sectionOf(frame.joists.size).thickness * frame.rimPlies
    case 'flush beam': {
      const { seam } = met.edge
      // the higher level's beam lies beyond the edge; one of both parts lies half in each
      if (seam === 'higher level’s beam') return 0
      const whole = beamThickness(frame.beams[beamAt(met)])
      return seam === 'shared beam' || seam === 'other zone’s beam' ? whole / 2 : whole
    }
    default:
      return null
  }
}

/** Whose fields the beam at an edge goes by; of another part's beam as that part sees it, from the other side. */
export function beamAt({ edge, role }: Pick<ViewEdge, 'edge' | 'role'>): 'front' | 'rear' {
  const theirs = edge.seam === 'other zone’s beam' || edge.seam === 'higher level’s beam'
  return (role === 'foot') === theirs ? 'rear' : 'front'
}

function boardAt({ frame, shape }: Job, edge: ZoneEdge, role: ViewEdge['role']): ViewEdge['board'] {
  const { kind, seam } = edge
  if (seam === 'hip') return 'hip'
  if (seam === 'higher level’s beam') return 'flush beam'
  if (kind === 'seam' && role !== 'side') return shape.seams === 'flush' ? 'flush beam' : 'none'
  if (kind === 'seam') return seam === 'other zone’s joist' ? 'none' : 'end joist'
  if (role === 'side') return 'end joist'
  if (kind === 'wall') return 'ledger'
  return frame.beams[beamAt({ edge, role })].set === 'flush' ? 'flush beam' : 'rim'
}

/** A rim covers the end joists' ends, and they lap a ledger's: common practice, no source. */
const RANK: { readonly [board in ViewEdge['board']]: number } = {
  rim: 3,
  'flush beam': 3,
  'end joist': 2,
  ledger: 1,
  hip: 0.5,
  none: 0,
}

/** How the board along an edge ends at the edge's start and at its end. */
export function boardEnds(view: ZoneView, index: number): readonly [BandEnd, BandEnd] {
  const count = view.edges.length
  const own = view.edges[index]
  return [
    cornerOf(own, view.edges[(index + count - 1) % count], cornerTurn(view, index)),
    cornerOf(own, view.edges[(index + 1) % count], cornerTurn(view, index + 1)),
  ]
}

/** Whether boards are mitred at the corner where an edge starts, for it is nearly straight. */
export function isBlunt(view: ZoneView, index: number): boolean {
  const { left, ahead } = cornerTurn(view, index)
  return left > 0 && ahead > BLUNT
}

/** At a corner that turns by less than 40 degrees a board cannot cover its neighbour's end: common practice, no source. */
const BLUNT = Math.cos((40 * Math.PI) / 180)

/** How the way turns at the corner where an edge starts: sine (positive: out) and cosine. */
function cornerTurn({ polygon }: ZoneView, index: number): { readonly left: number; readonly ahead: number } {
  const before = edgeAt(polygon, index - 1)
  const after = edgeAt(polygon, index)
  const size = lengthOf(before) * lengthOf(after)
  const dot =
    (before.to.x - before.from.x) * (after.to.x - after.from.x) +
    (before.to.y - before.from.y) * (after.to.y - after.from.y)
  return { left: turn(before.from, after.from, after.to) / size, ahead: dot / size }
}

function cornerOf(
  own: ViewEdge | undefined,
  other: ViewEdge | undefined,
  { left, ahead }: ReturnType<typeof cornerTurn>,
): BandEnd {
  if (own === undefined || other === undefined || left <= 0) return { kind: 'square' }
  const higher = RANK[own.board] - RANK[other.board]
  // a ledger's end is lapped whatever the angle
  const rims = [own, other].some(({ board }) => board === 'rim' || board === 'flush beam')
  if (higher === 0 || (ahead > BLUNT && rims && other.board !== 'none')) return { kind: 'mitred' }
  return higher > 0 ? { kind: 'covers' } : { kind: 'butts', width: other.width }
}
