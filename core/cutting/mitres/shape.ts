import type { Cut, Mitres } from '../types.ts'

/** Pieces of one shape can change places: same length, same ends. */
export function shapeOf(length: number, mitres: Mitres | undefined): string {
  return mitres === undefined ? `${length}` : `${length} ${mitres.across} ${mitres.ends.join(' ')}`
}

/** The shape of what is cut there, as it lies in the deck. */
export function shapeOfCut({ length, mitres, turned }: Cut): string {
  return shapeOf(length, mitres === undefined || turned === undefined ? mitres : asLaid(mitres, true))
}

/** The mitres of a piece as it lies on the board; of one on the board, as it lies in the deck. */
export function asLaid(mitres: Mitres, turned: boolean): Mitres {
  const [left, right] = mitres.ends
  return turned ? { ...mitres, ends: [right, left] } : mitres
}
