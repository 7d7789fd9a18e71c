import type { PlanePoint, Polygon } from './types.ts'

/**
 * The first two edges of an outline that cross, touch or fold back on each other, by index; null where it is simple.
 * Exact on the grid.
 */
export function firstCrossing(polygon: Polygon): readonly [number, number] | null {
  const count = polygon.length
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const a = at(polygon, i)
      const b = at(polygon, i + 1)
      const c = at(polygon, j)
      const d = at(polygon, j + 1)
      if (j === i + 1) {
        if (foldsBack(a, b, d)) return [i, j]
      } else if (i === 0 && j === count - 1) {
        if (foldsBack(c, a, b)) return [i, j]
      } else if (touch(a, b, c, d)) return [i, j]
    }
  }
  return null
}

function at(polygon: Polygon, index: number): PlanePoint {
  const point = polygon[index % polygon.length]
  if (point === undefined) throw new RangeError('an outline without corners')
  return point
}

/** Twice the area of the triangle: its sign says on which side of a to b the third point lies. */
export function turn(a: PlanePoint, b: PlanePoint, c: PlanePoint): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/** Whether the way from b to c lies back along the way from a to b. */
function foldsBack(a: PlanePoint, b: PlanePoint, c: PlanePoint): boolean {
  const ahead = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y)
  return turn(a, b, c) === 0 && ahead <= 0
}

function touch(a: PlanePoint, b: PlanePoint, c: PlanePoint, d: PlanePoint): boolean {
  const [c1, d1, a1, b1] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)]
  if (c1 * d1 < 0 && a1 * b1 < 0) return true
  return (
    (c1 === 0 && between(a, b, c)) ||
    (d1 === 0 && between(a, b, d)) ||
    (a1 === 0 && between(c, d, a)) ||
    (b1 === 0 && between(c, d, b))
  )
}

/** Whether a point known to be on the line through a and b lies from one to the other. */
function between(a: PlanePoint, b: PlanePoint, point: PlanePoint): boolean {
  return (
    Math.min(a.x, b.x) <= point.x &&
    point.x <= Math.max(a.x, b.x) &&
    Math.min(a.y, b.y) <= point.y &&
    point.y <= Math.max(a.y, b.y)
  )
}
