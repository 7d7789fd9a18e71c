import { TICKS_PER_FOOT } from '../units/index.ts'

/**
 * Length that each of a row of supports carries: half of the spans beside it and the overhang beyond it.
 * @param from start of what is carried
 * @param at places of the supports, ascending, within from and to
 * @param to end of what is carried
 */
export function tributaryLengths(from: number, at: readonly number[], to: number): readonly number[] {
  return at.map((place, i) => {
    const before = i === 0 ? from : ((at[i - 1] ?? from) + place) / 2
    const after = i === at.length - 1 ? to : (place + (at[i + 1] ?? to)) / 2
    return after - before
  })
}

/** Square feet of a rectangle with sides in ticks. */
export function squareFeet(a: number, b: number): number {
  return (a * b) / (TICKS_PER_FOOT * TICKS_PER_FOOT)
}
