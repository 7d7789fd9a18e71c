import {
  common,
  isInside,
  type PlanePoint,
  type Polygon,
  turn,
  twiceArea,
  without,
} from '../geometry/index.ts'
import { type Job, type JoistDirection, type StatedZone, zoneList } from '../job/index.ts'
import { ticks } from '../units/index.ts'
import { withHip } from './hip.ts'
import type { Outline } from './outline.ts'
import type { OutlineEdge, Point, Zone, ZoneEdge } from './types.ts'

export type Part = Pick<Zone, 'id' | 'level' | 'joists' | 'outline' | 'edges'>

/** A part smaller than a square foot is what clipping leaves of a line, not a zone. */
const LEAST_AREA = 384 ** 2

/**
 * The outline divided into zones: the stated rectangles, each clipped by the outline and by those before it, and what
 * is left. A zone that falls apart becomes several.
 */
export function zonesOf(job: Job, outline: Outline): readonly Part[] {
  const stated = zoneList(job.shape.zones)
  if (stated.length === 0) {
    const edges = outline.edges.map((edge): ZoneEdge => ({ ...edge, seam: null }))
    return [{ id: 'zone-1', level: 1, joists: job.shape.joists, outline: outline.corners, edges }]
  }
  let rest: readonly Polygon[] = [outline.corners]
  const parts: { readonly polygon: Polygon; readonly joists: JoistDirection }[] = []
  for (const zone of stated) {
    const { joists } = zone
    const box = boxOf(zone)
    const covered = common(rest, [box])
    const large = covered.filter(isLarge)
    parts.push(...whole(large).map((polygon) => ({ polygon, joists })))
    // what is too small for a part of its own stays with what lies beside it
    rest = large.length === covered.length ? without(rest, [box]) : without(rest, large)
  }
  const all = [...whole(rest).map((polygon) => ({ polygon, joists: job.shape.joists })), ...parts]
  const places = [...outline.corners, ...all.flatMap(({ polygon }) => polygon)]
  const square = all.map(({ polygon, joists }) => ({ joists, polygon: withCorners(polygon, places) }))
  const cornered = job.shape.seams === 'hip' ? withHip(square, outline.corners) : square
  return cornered.map(({ polygon, joists }, i) => ({
    id: `zone-${i + 1}`,
    level: 1,
    joists,
    outline: polygon,
    edges: edgesOf(job, polygon, i, cornered, outline.edges),
  }))
}

/** A stated part's corners. */
export function boxOf({ x, y, width, depth }: StatedZone): Polygon {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + depth },
    { x, y: y + depth },
  ]
}

/** Whether a shape is more than what clipping leaves of a line. */
export function isLarge(polygon: Polygon): boolean {
  return twiceArea(polygon) / 2 > LEAST_AREA
}

/** Whole ticks, holes and slivers left out. */
function whole(polygons: readonly Polygon[]): readonly (readonly Point[])[] {
  return polygons
    .filter(isLarge)
    .map((polygon) =>
      startingLeft(polygon.map(({ x, y }) => ({ x: ticks(Math.round(x)), y: ticks(Math.round(y)) }))),
    )
}

/** The same corners, the one nearest the left corner at the wall first, so that they stand in one order. */
function startingLeft(polygon: readonly Point[]): readonly Point[] {
  const first = polygon.reduce((best, point, i) => {
    const other = polygon[best]
    return other !== undefined && (point.y < other.y || (point.y === other.y && point.x < other.x)) ? i : best
  }, 0)
  return [...polygon.slice(first), ...polygon.slice(0, first)]
}

/** Corners of other shapes that lie on an edge become corners of it. */
function withCorners(polygon: Polygon, places: readonly PlanePoint[]): readonly Point[] {
  return polygon.flatMap((from, i) => {
    const to = polygon[(i + 1) % polygon.length] ?? from
    const far = (point: PlanePoint) => Math.hypot(point.x - from.x, point.y - from.y)
    const on = places
      .filter((place) => liesOn(from, to, place))
      .sort((a, b) => far(a) - far(b))
      .filter((place, k, sorted) => k === 0 || far(place) - far(sorted[k - 1] ?? from) > 1)
    return [from, ...on].map(({ x, y }) => ({ x: ticks(x), y: ticks(y) }))
  })
}

/** Strictly between the ends, within a tick of the line. */
function liesOn(from: PlanePoint, to: PlanePoint, { x, y }: PlanePoint): boolean {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const along = ((x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)) / length
  return along > 1 && along < length - 1 && Math.abs(turn(from, to, { x, y })) / length <= 1
}

function edgesOf(
  job: Job,
  polygon: readonly Point[],
  own: number,
  zones: readonly { readonly polygon: Polygon; readonly joists: JoistDirection }[],
  outer: readonly OutlineEdge[],
): readonly ZoneEdge[] {
  return polygon.map((from, i): ZoneEdge => {
    const to = polygon[(i + 1) % polygon.length] ?? from
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    const on = outer.find((edge) => {
      const size = Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y)
      const parallel = Math.abs(
        (edge.to.x - edge.from.x) * (to.y - from.y) - (edge.to.y - edge.from.y) * (to.x - from.x),
      )
      return parallel / size / length < 0.02 && liesOn(edge.from, edge.to, middle)
    })
    if (on !== undefined) return { from, to, kind: on.kind, number: on.number, seam: null }
    // a little outside of the edge lies the zone beside it
    const beyond = {
      x: middle.x + ((to.y - from.y) / length) * 4,
      y: middle.y - ((to.x - from.x) / length) * 4,
    }
    const other = zones.findIndex((zone, k) => k !== own && isInside(zone.polygon, beyond))
    if (other < 0) return { from, to, kind: 'open', number: null, seam: null }
    return { from, to, kind: 'seam', number: null, seam: seamOf(job, own, other, zones, { from, to }) }
  })
}

/**
 * What stands on a seam. Joists of both zones ending there share a beam, the later zone's; joists of one ending at the
 * other's end joist have a beam of their own; of two that run beside it the earlier zone has the end joist, or each has
 * one where the job doubles them.
 */
function seamOf(
  { shape }: Job,
  own: number,
  other: number,
  zones: readonly { readonly joists: JoistDirection }[],
  { from, to }: { readonly from: Point; readonly to: Point },
): ZoneEdge['seam'] {
  if (from.x !== to.x && from.y !== to.y) return 'hip'
  const beside = (zone: number) => (zones[zone]?.joists === 'away' ? from.x === to.x : from.y === to.y)
  if (beside(own))
    return !beside(other) || own < other || shape.seams === 'doubled' ? 'end joist' : 'other zone’s joist'
  if (beside(other)) return 'own beam'
  return own < other ? 'other zone’s beam' : 'shared beam'
}
