import type { PlanePoint } from './types.ts'

/** A rotation about the origin, from x towards y. */
export interface Rotation {
  readonly cos: number
  readonly sin: number
}

/** @param degrees 0 is exact */
export function rotationBy(degrees: number): Rotation {
  if (degrees === 0) return { cos: 1, sin: 0 }
  const radians = (degrees * Math.PI) / 180
  return { cos: Math.cos(radians), sin: Math.sin(radians) }
}

export function rotate({ x, y }: PlanePoint, { cos, sin }: Rotation): PlanePoint {
  return { x: x * cos - y * sin, y: x * sin + y * cos }
}

export function rotateBack({ x, y }: PlanePoint, { cos, sin }: Rotation): PlanePoint {
  return { x: x * cos + y * sin, y: y * cos - x * sin }
}
