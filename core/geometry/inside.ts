import { turn } from './crossing.ts'
import type { PlanePoint, Polygon } from './types.ts'

/** Whether a point lies in a polygon, its border included. Exact on the grid. */
export function isInside(polygon: Polygon, point: PlanePoint): boolean {
  let inside = false
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length] ?? a
    if (isOn(a, b, point)) return true
    if (a.y > point.y !== b.y > point.y && turn(a, b, point) > 0 === b.y > a.y) inside = !inside
  }
  return inside
}

function isOn(a: PlanePoint, b: PlanePoint, point: PlanePoint): boolean {
  return (
    turn(a, b, point) === 0 &&
    Math.min(a.x, b.x) <= point.x &&
    point.x <= Math.max(a.x, b.x) &&
    Math.min(a.y, b.y) <= point.y &&
    point.y <= Math.max(a.y, b.y)
  )
}
