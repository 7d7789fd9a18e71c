import { clearField, type JobStatement } from '../../core/job/index.ts'
import { feet, TICKS_PER_FOOT, type Ticks, ticks } from '../../core/units/index.ts'
import { pricedPart } from './priced-part.ts'

export const WIDTH = 'size.width'
/** The tape shows 20 ft in steps of 6 in: 41 widths. */
export const TAPE_LENGTH = feet(20)
export const TAPE_STEP = ticks(TICKS_PER_FOOT / 2)
const SHORTEST = feet(4)
/** a width this close to an end of the tape moves the tape */
const MARGIN = feet(2)

/** Everything but the width, as text: equal keys mean that the rows of one tape serve the other. */
export function tapeKey(statement: JobStatement): string {
  return JSON.stringify(clearField(pricedPart(statement), WIDTH))
}

/** Where the tape starts: whole feet, kept where the width still lies well on it, so that it does not slide while dragged. */
export function tapeStart(width: Ticks, current: Ticks | null): Ticks {
  if (current !== null) {
    const low = current === SHORTEST ? current : current + MARGIN
    if (width >= low && width <= current + TAPE_LENGTH - MARGIN) return current
  }
  const wanted = Math.floor((width - TAPE_LENGTH / 2) / TICKS_PER_FOOT) * TICKS_PER_FOOT
  return ticks(Math.max(SHORTEST, wanted))
}
