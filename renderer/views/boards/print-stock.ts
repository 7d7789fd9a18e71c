import { printLength, TICKS_PER_FOOT, type Ticks } from '../../../core/units/index.ts'

/** A stock length as the yard calls it, `16'`; an odd one in feet and inches. */
export function printStock(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${length / TICKS_PER_FOOT}'` : printLength(length)
}
