import { edgeAt, heightAt } from './lines.ts'
import type { Polygon } from './types.ts'

/** A stretch of an upright line inside a polygon, and the edges at which it ends. */
export interface Stretch {
  readonly low: number
  readonly high: number
  readonly lowEdge: number
  readonly highEdge: number
}

/**
 * Stretches of the upright line at x inside a polygon, from the lowest up. Where x is that of a corner or an edge, the
 * side says whether what lies just right (1) or just left (-1) of it is meant.
 */
export function stretchesAt(polygon: Polygon, x: number, side: 1 | -1): readonly Stretch[] {
  const crossed = polygon.flatMap((_, index) => {
    const edge = edgeAt(polygon, index)
    const before = side === 1 ? edge.from.x <= x : edge.from.x < x
    const after = side === 1 ? edge.to.x <= x : edge.to.x < x
    if (before === after) return []
    const slope = (edge.to.y - edge.from.y) / (edge.to.x - edge.from.x)
    return [{ index, y: heightAt(edge, x), slope: slope * side }]
  })
  crossed.sort((a, b) => a.y - b.y || a.slope - b.slope)
  const stretches: Stretch[] = []
  for (let i = 0; i + 1 < crossed.length; i += 2) {
    const [low, high] = [crossed[i], crossed[i + 1]]
    if (low === undefined || high === undefined || high.y <= low.y) continue
    stretches.push({ low: low.y, high: high.y, lowEdge: low.index, highEdge: high.index })
  }
  return stretches
}

/**
 * A board's place along an upright strip inside a polygon: where each of its long edges ends. Its ends are straight
 * cuts; where a corner of the polygon reaches into the strip the board ends square before it.
 */
export interface StripPart {
  readonly left: Stretch
  readonly right: Stretch
}

/** Parts of the strip from x0 to x1 that lie in a polygon with their whole width, from the lowest up. */
export function stripParts(polygon: Polygon, x0: number, x1: number): readonly StripPart[] {
  const right = stretchesAt(polygon, x1, -1)
  return stretchesAt(polygon, x0, 1).flatMap((one) =>
    right.flatMap((other) => {
      const low = Math.max(one.low, other.low)
      const high = Math.min(one.high, other.high)
      if (high <= low) return []
      const part = squaredBefore(polygon, { left: one, right: other }, x0, x1)
      return part.left.high > part.left.low && part.right.high > part.right.low ? [part] : []
    }),
  )
}

function squaredBefore(polygon: Polygon, part: StripPart, x0: number, x1: number): StripPart {
  const { left, right } = part
  const between = (a: number, b: number, x: number) => a + ((b - a) * (x - x0)) / (x1 - x0)
  const inStrip = ({ x }: Polygon[number]) => x > x0 && x < x1
  // the area is positive: low edges follow each other from left to right, high ones from right to left
  const below = cornersBetween(polygon, left.lowEdge, right.lowEdge).filter(inStrip)
  const above = cornersBetween(polygon, right.highEdge, left.highEdge).filter(inStrip)
  const lowReached = below.some(({ x, y }) => y > between(left.low, right.low, x))
  const highReached = above.some(({ x, y }) => y < between(left.high, right.high, x))
  const low = Math.max(left.low, right.low, ...below.map(({ y }) => y))
  const high = Math.min(left.high, right.high, ...above.map(({ y }) => y))
  const cut = (own: Stretch): Stretch => ({
    ...own,
    low: lowReached ? low : own.low,
    high: highReached ? high : own.high,
  })
  return { left: cut(left), right: cut(right) }
}

/** Corners passed on the way from one edge to a later one. */
function cornersBetween(polygon: Polygon, from: number, to: number): Polygon {
  const count = (to - from + polygon.length) % polygon.length
  return Array.from({ length: count }, (_, i) => polygon[(from + 1 + i) % polygon.length]).filter(
    (corner) => corner !== undefined,
  )
}
