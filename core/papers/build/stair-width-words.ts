import type { StairPlan } from '../../stairs/index.ts'
import { printLength } from '../../units/index.ts'

/** How wide stairs are: a flight that turns is as wide as its landing is deep, and told where that is another width. */
export function stairWidthWords({ width, flights }: Pick<StairPlan, 'width' | 'flights'>): string {
  const others = flights.filter((flight) => flight.width !== width)
  return [
    `${printLength(width)} wide`,
    ...others.map(({ number, width: own }) => `flight ${number} ${printLength(own)}`),
  ].join(', ')
}
