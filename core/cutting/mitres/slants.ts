import type { Mitres } from '../types.ts'

/** Far below a tick, far above the error of a tangent: keeps whole slants whole. */
const EPSILON = 1e-6

/** Shortest edge of a piece whose neighbours share its cuts, in ticks. */
const SHORTEST_EDGE = 2

/** How much further right a slanting end's far edge ends than its near one, whole ticks towards square. */
export function slantOf({ across }: { readonly across: number }, hundredths: number): number {
  const most = across * Math.tan((Math.abs(hundredths) / 100) * (Math.PI / 180))
  return Math.sign(hundredths) * Math.floor(most + EPSILON)
}

/** What a saw cut takes of the board along its length, whole ticks up: the kerf is square to the cut. */
export function kerfAlong(kerf: number, hundredths: number): number {
  if (hundredths === 0) return kerf
  return Math.ceil(kerf / Math.cos((Math.abs(hundredths) / 100) * (Math.PI / 180)) - EPSILON)
}

/** An end that may share its cut with another of the same class; null: none may. */
export type EndClass = { readonly across: number; readonly hundredths: number } | null

/** Two ends can share a cut where this is the same: across, and the angle with its sign. */
export function classKey({ across, hundredths }: NonNullable<EndClass>): string {
  return `${across}:${hundredths}`
}

/**
 * The classes of a piece's ends; none where its two cuts meet, or nearly so, within the board, for then the pieces on
 * both sides would want the same wood.
 */
export function endClasses(length: number, mitres: Mitres | undefined): readonly [EndClass, EndClass] {
  if (mitres === undefined) return [null, null]
  const [left, right] = mitres.ends
  const [from, to] = [slantOf(mitres, left), slantOf(mitres, right)]
  const near = length - Math.max(0, to) - Math.max(0, -from)
  const far = length - Math.max(0, -to) - Math.max(0, from)
  if (Math.min(near, far) < SHORTEST_EDGE) return [null, null]
  const classOf = (hundredths: number, slant: number): EndClass =>
    slant === 0 ? null : { across: mitres.across, hundredths }
  return [classOf(left, from), classOf(right, to)]
}
