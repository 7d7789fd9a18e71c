import type { BeamPiece, BeamResult } from './continuous-beam.ts'

/** Internal forces and deflection of a piece at a distance from its left end, in. */
export function shearIn(piece: BeamPiece, t: number): number {
  return piece.shear - piece.load * t
}

/** in-lb; positive sags. */
export function momentIn(piece: BeamPiece, t: number): number {
  return piece.moment + piece.shear * t - (piece.load * t * t) / 2
}

/** in, downward, from E I y″ = −M. */
export function deflectionIn(piece: BeamPiece, t: number, stiffness: number): number {
  const bent = (piece.moment * t ** 2) / 2 + (piece.shear * t ** 3) / 6 - (piece.load * t ** 4) / 24
  return piece.deflection + piece.slope * t - bent / stiffness
}

function slopeIn(piece: BeamPiece, t: number, stiffness: number): number {
  return piece.slope - (piece.moment * t + (piece.shear * t ** 2) / 2 - (piece.load * t ** 3) / 6) / stiffness
}

export interface Extreme {
  readonly value: number
  /** from the beam's left end, in */
  readonly at: number
}

/** Greatest and least moment over a stretch of the beam, in-lb. */
export function momentExtremes(
  result: BeamResult,
  from: number,
  to: number,
): { greatest: Extreme; least: Extreme } {
  return extremes(result, from, to, momentIn, (piece) => {
    // the moment turns where the shear is nothing
    return piece.load === 0 ? [] : [piece.shear / piece.load]
  })
}

/** Greatest shear in size over a stretch, lb. */
export function greatestShear(result: BeamResult, from: number, to: number): number {
  const { greatest, least } = extremes(result, from, to, shearIn, () => [])
  return Math.max(greatest.value, -least.value)
}

/** Greatest deflection down (positive) and up (negative) over a stretch, in. */
export function deflectionExtremes(
  result: BeamResult,
  from: number,
  to: number,
): { down: Extreme; up: Extreme } {
  const { stiffness } = result.model
  const found = extremes(
    result,
    from,
    to,
    (piece, t) => deflectionIn(piece, t, stiffness),
    (piece) => levelPlaces(piece, stiffness),
  )
  return { down: found.greatest, up: found.least }
}

/** Parts of a piece searched for a level tangent: the slope is a cubic, which turns twice at most. */
const PARTS = 12

/** Places within a piece where the beam is level, to a millionth of its length. */
function levelPlaces(piece: BeamPiece, stiffness: number): readonly number[] {
  const l = piece.to - piece.from
  const places: number[] = []
  for (let i = 0; i < PARTS; i++) {
    let low = (l * i) / PARTS
    let high = (l * (i + 1)) / PARTS
    const falls = slopeIn(piece, low, stiffness) > 0
    if (slopeIn(piece, high, stiffness) > 0 === falls) continue
    while (high - low > l * 1e-6) {
      const middle = (low + high) / 2
      if (slopeIn(piece, middle, stiffness) > 0 === falls) low = middle
      else high = middle
    }
    places.push((low + high) / 2)
  }
  return places
}

function extremes(
  result: BeamResult,
  from: number,
  to: number,
  valueAt: (piece: BeamPiece, t: number) => number,
  turns: (piece: BeamPiece) => readonly number[],
): { greatest: Extreme; least: Extreme } {
  let greatest: Extreme | null = null
  let least: Extreme | null = null
  for (const piece of result.pieces) {
    const start = Math.max(from, piece.from)
    const end = Math.min(to, piece.to)
    if (start >= end) continue
    const inner = turns(piece)
      .map((t) => piece.from + t)
      .filter((x) => x > start && x < end)
    for (const at of [start, end, ...inner]) {
      const value = valueAt(piece, at - piece.from)
      if (greatest === null || value > greatest.value) greatest = { value, at }
      if (least === null || value < least.value) least = { value, at }
    }
  }
  if (greatest === null || least === null)
    throw new Error(`no part of the beam lies between ${from} and ${to} in`)
  return { greatest, least }
}
