import { nearestSixteenth, printLength } from '../units/index.ts'

/** A distance from the deck's left end, its wall or its front, in ticks; outward where the place lies outside of that. */
export function offsetText(offset: number): string {
  const rounded = nearestSixteenth(Math.abs(offset))
  return offset < 0 && rounded > 0 ? `${printLength(rounded)} outward` : printLength(rounded)
}
