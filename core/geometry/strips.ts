import { edgeAt, heightAt } from './lines.ts'
import type { PlanePoint, Polygon } from './types.ts'

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
  const [lefts, rights] = [stretchesAt(polygon, x0, 1), stretchesAt(polygon, x1, -1)]
  const inStrip = polygon.filter(({ x }) => x > x0 && x < x1)
  const between = (a: number, b: number, x: number) => a + ((b - a) * (x - x0)) / (x1 - x0)
  const parts = clearSpans(polygon, x0, x1).flatMap((span) => {
    const around = ({ low, high }: Stretch) => low <= span.low && span.high <= high
    const [left, right] = [lefts.find(around), rights.find(around)]
    return left && right ? [{ span, left, right }] : []
  })
  const fork = (a: StripPart | undefined, b: StripPart | undefined) =>
    a?.left === b?.left || a?.right === b?.right
  // from the clear span an end runs on to the edges, but where a corner reaches into it, or it would lie in another part
  return parts.map((part, i): StripPart => {
    const { span, left, right } = part
    const lowReached = inStrip.some(({ x, y }) => y <= span.low && y > between(left.low, right.low, x))
    const highReached = inStrip.some(({ x, y }) => y >= span.high && y < between(left.high, right.high, x))
    const cut = (own: Stretch): Stretch => ({
      ...own,
      low: lowReached || fork(parts[i - 1], part) ? span.low : own.low,
      high: highReached || fork(part, parts[i + 1]) ? span.high : own.high,
    })
    return { left: cut(left), right: cut(right) }
  })
}

interface Span {
  readonly low: number
  readonly high: number
}

/** Heights at which the way straight across a strip meets no edge, from the lowest up: all of it is inside, or none. */
function clearSpans(polygon: Polygon, x0: number, x1: number): readonly Span[] {
  const met = polygon.flatMap((_, index): readonly Span[] => {
    const edge = edgeAt(polygon, index)
    const { from, to } = edge
    if (Math.max(from.x, to.x) <= x0 || Math.min(from.x, to.x) >= x1) return []
    const at = ({ x, y }: PlanePoint) => (x < x0 ? heightAt(edge, x0) : x > x1 ? heightAt(edge, x1) : y)
    return [{ low: Math.min(at(from), at(to)), high: Math.max(at(from), at(to)) }]
  })
  met.sort((a, b) => a.low - b.low)
  const clear: Span[] = []
  let top = met[0]?.high ?? 0
  for (const { low, high } of met) {
    if (low > top) clear.push({ low: top, high: low })
    top = Math.max(top, high)
  }
  return clear
}
