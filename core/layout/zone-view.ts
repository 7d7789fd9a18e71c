import { sectionOf } from '../data/index.ts'
import type { BandEnd, PlanePoint, Polygon, Segment } from '../geometry/index.ts'
import { edgeAt, turn } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import { isSteep } from './beam-lines.ts'
import type { Zone, ZoneEdge } from './types.ts'

/** An edge as the joists meet it: they start at a head, end at a foot, and run beside a side. */
export interface ViewEdge {
  readonly edge: ZoneEdge
  /** index of the edge in the zone */
  readonly index: number
  readonly role: 'head' | 'foot' | 'side'
  readonly board: 'ledger' | 'rim' | 'end joist' | 'none'
  /** an open edge that leans more along the joists than across them: they hang from its rim */
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
  const board = boardAt(edge, role)
  const width = board === 'none' ? 0 : board === 'rim' ? thickness * job.frame.rimPlies : thickness
  const steep = board === 'rim' && isSteep({ from, to })
  return { edge, index, role, board, steep, width: ticks(width) }
}

function boardAt({ kind, seam }: ZoneEdge, role: ViewEdge['role']): ViewEdge['board'] {
  if (kind === 'seam') return role === 'side' && seam !== 'other zone’s joist' ? 'end joist' : 'none'
  if (role === 'side') return 'end joist'
  return kind === 'wall' ? 'ledger' : 'rim'
}

/** A rim covers the end joists' ends, and they lap a ledger's: common practice, no source. */
const RANK: { readonly [board in ViewEdge['board']]: number } = { rim: 3, 'end joist': 2, ledger: 1, none: 0 }

/** How the board along an edge ends at the edge's start and at its end. */
export function boardEnds({ polygon, edges }: ZoneView, index: number): readonly [BandEnd, BandEnd] {
  const own = edges[index]
  const count = edges.length
  const before = edges[(index + count - 1) % count]
  const after = edges[(index + 1) % count]
  const edge = edgeAt(polygon, index)
  const start = turn(edgeAt(polygon, index - 1).from, edge.from, edge.to)
  const end = turn(edge.from, edge.to, edgeAt(polygon, index + 1).to)
  return [cornerOf(own, before, start), cornerOf(own, after, end)]
}

function cornerOf(own: ViewEdge | undefined, other: ViewEdge | undefined, turns: number): BandEnd {
  if (own === undefined || other === undefined || turns <= 0) return { kind: 'square' }
  const ahead = RANK[own.board] - RANK[other.board]
  if (ahead > 0) return { kind: 'covers' }
  return ahead < 0 ? { kind: 'butts', width: other.width } : { kind: 'mitred' }
}
