import { isInside } from './inside.ts'
import type { PlanePoint, Polygon, Segment } from './types.ts'

export function lengthOf({ from, to }: Segment): number {
  return Math.hypot(to.x - from.x, to.y - from.y)
}

/** The edge from corner i to the next one. */
export function edgeAt(polygon: Polygon, index: number): Segment {
  const count = polygon.length
  const from = polygon[((index % count) + count) % count]
  const to = polygon[(((index + 1) % count) + count) % count]
  if (from === undefined || to === undefined) throw new RangeError('an outline without corners')
  return { from, to }
}

/** The same segment moved by a distance to the left of its way: for an edge of a polygon of positive area, inward. */
export function movedLeft({ from, to }: Segment, distance: number): Segment {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const dx = (-(to.y - from.y) / length) * distance
  const dy = ((to.x - from.x) / length) * distance
  return { from: { x: from.x + dx, y: from.y + dy }, to: { x: to.x + dx, y: to.y + dy } }
}

/** Where two lines meet, both drawn on without end; null where they are parallel. */
export function meeting(a: Segment, b: Segment): PlanePoint | null {
  const ax = a.to.x - a.from.x
  const ay = a.to.y - a.from.y
  const bx = b.to.x - b.from.x
  const by = b.to.y - b.from.y
  const cross = ax * by - ay * bx
  if (Math.abs(cross) <= 1e-9 * Math.hypot(ax, ay) * Math.hypot(bx, by)) return null
  const share = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross
  // the coordinate of a level or upright line is exact
  return {
    x: ax === 0 ? a.from.x : bx === 0 ? b.from.x : a.from.x + ax * share,
    y: ay === 0 ? a.from.y : by === 0 ? b.from.y : a.from.y + ay * share,
  }
}

/** y of a line at an x, exact at its ends; the line must not be upright. */
export function heightAt({ from, to }: Segment, x: number): number {
  if (from.y === to.y) return from.y
  if (x === to.x) return to.y
  return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x)
}

/** The point at a share of a segment's length; 0 and 1 are its ends as they stand. */
export function pointAt({ from, to }: Segment, share: number): PlanePoint {
  if (share === 0) return from
  if (share === 1) return to
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

/** At which share of a segment's length a point lies, square to it. */
export function shareAt({ from, to }: Segment, { x, y }: PlanePoint): number {
  const along = (x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)
  return along / lengthOf({ from, to }) ** 2
}

/** The parts of a segment that lie in a polygon, in its own way; an end that lies inside keeps its exact place. */
export function partsInside(polygon: Polygon, segment: Segment): readonly Segment[] {
  const at = (share: number) => pointAt(segment, share)
  const shares = polygon.flatMap((_, i) => {
    const edge = edgeAt(polygon, i)
    const point = meeting(segment, edge)
    return point === null || !isBeside(edge, point) ? [] : [shareAt(segment, point)]
  })
  const stops = [0, ...shares.filter((share) => share > 1e-9 && share < 1 - 1e-9), 1].sort((a, b) => a - b)
  const parts: Segment[] = []
  for (let i = 0; i + 1 < stops.length; i++) {
    const [a, b] = [stops[i] ?? 0, stops[i + 1] ?? 1]
    if (b - a < 1e-9 || !isInside(polygon, at((a + b) / 2))) continue
    parts.push({ from: at(a), to: at(b) })
  }
  return joined(parts)
}

/** Parts that follow on each other without a gap, as one. */
function joined(parts: readonly Segment[]): readonly Segment[] {
  const done: Segment[] = []
  for (const part of parts) {
    const last = done.at(-1)
    const follows = last !== undefined && last.to.x === part.from.x && last.to.y === part.from.y
    if (follows) done[done.length - 1] = { from: last.from, to: part.to }
    else done.push(part)
  }
  return done
}

/** Whether a point of an edge's line lies between its ends, their own places included. */
function isBeside({ from, to }: Segment, point: PlanePoint): boolean {
  const slack = 1e-6
  return (
    point.x >= Math.min(from.x, to.x) - slack &&
    point.x <= Math.max(from.x, to.x) + slack &&
    point.y >= Math.min(from.y, to.y) - slack &&
    point.y <= Math.max(from.y, to.y) + slack
  )
}
