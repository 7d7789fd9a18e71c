import { type LumberSize, sectionOf } from '../data/index.ts'
import { inches } from '../units/index.ts'

/** The deck screw that holds a board of a size: 3 in long through what is thicker than 1 in. */
export function boardScrew(size: LumberSize): string {
  return sectionOf(size).thickness > inches(1) ? 'screw-deck-3' : 'screw-deck-2-1/2'
}
