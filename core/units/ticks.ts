import type { Brand } from './brand.ts'

/** A length as a whole count of 1/32 in, so that kerfs (1/8, 3/32) and tape marks (1/16) are exact. */
export type Ticks = Brand<'Ticks'>

export const TICKS_PER_INCH = 32
export const TICKS_PER_FOOT = 384

/**
 * Longest length the program will reckon with, 4,000 ft.
 * A deck's coordinates stay far below it, and squares of it stay exact in a double.
 */
export const MAX_TICKS = 4000 * TICKS_PER_FOOT

/** Brands a whole number of 1/32 in. Throws on a fraction or beyond ±4,000 ft: that is a bug, not input. */
export function ticks(n: number): Ticks {
  if (!Number.isInteger(n) || Math.abs(n) > MAX_TICKS) {
    throw new RangeError(`${n} is not a whole number of 1/32 in within ±4,000 ft`)
  }
  return (n === 0 ? 0 : n) as Ticks
}

/** Inches to ticks; the inches must lie on the 1/32 grid. */
export function inches(n: number): Ticks {
  return ticks(n * TICKS_PER_INCH)
}

export function feet(n: number): Ticks {
  return ticks(n * TICKS_PER_FOOT)
}

export function toInches(length: number): number {
  return length / TICKS_PER_INCH
}

export function toFeet(length: number): number {
  return length / TICKS_PER_FOOT
}

/** A computed length off the grid, rounded up to a tick: used where it becomes a cut length. */
export function ceilTicks(n: number): Ticks {
  return ticks(Math.ceil(n - 1e-6))
}

/** Rounds to the nearest 1/16 in, a half up, as places of posts are stated. */
export function nearestSixteenth(n: number): Ticks {
  return ticks(Math.floor(n / 2 + 0.5) * 2)
}
