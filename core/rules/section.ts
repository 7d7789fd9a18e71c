import { dressedSizes, type LumberSize } from '../data/index.ts'
import { toInches } from '../units/index.ts'

/** A rectangle in inches, bent about the axis across its depth. */
export interface Rectangle {
  readonly breadth: number
  readonly depth: number
}

/** Dressed section of a member of one or more plies side by side (PS 20, dry). */
export function rectangleOf(size: LumberSize, plies = 1): Rectangle {
  const { thickness, depth } = dressedSizes[size]
  return { breadth: toInches(thickness) * plies, depth: toInches(depth) }
}

/** Area, in². */
export function areaOf({ breadth, depth }: Rectangle): number {
  return breadth * depth
}

/** Section modulus S = b d² / 6, in³ (NDS 3.3.2). */
export function sectionModulus({ breadth, depth }: Rectangle): number {
  return (breadth * depth ** 2) / 6
}

/** Moment of inertia I = b d³ / 12, in⁴ (NDS 3.3.2). */
export function momentOfInertia({ breadth, depth }: Rectangle): number {
  return (breadth * depth ** 3) / 12
}
