import type { Polygon } from './types.ts'

/** Twice the area, square ticks; positive where the corners turn from x towards y. Exact on the grid up to 4,000 ft. */
export function twiceArea(polygon: Polygon): number {
  let sum = 0
  polygon.forEach((point, i) => {
    const next = polygon[(i + 1) % polygon.length] ?? point
    sum += point.x * next.y - next.x * point.y
  })
  return sum
}

/** The same corners in the order that makes the area positive, the first one first. */
export function turnedPositive<P extends Polygon[number]>(polygon: readonly P[]): readonly P[] {
  const [first, ...others] = polygon
  if (first === undefined || twiceArea(polygon) >= 0) return polygon
  return [first, ...others.reverse()]
}
