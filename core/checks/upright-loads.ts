import { sectionOf } from '../data/index.ts'
import type { PlacedFlight, StairPlan, StringerPattern } from '../stairs/index.ts'

/**
 * What each upright behind a header carries of the stringers on it, lb, from one side of the flight to the other: a
 * stringer between two uprights by the lever between them, one beyond the outermost on the header's free end, which
 * presses more than its own load on the nearest and lifts at the next. An outer stringer brings half of an inner one's.
 * @param each load of an inner stringer, lb
 */
export function uprightLoads(
  { members }: Pick<StairPlan, 'members'>,
  { head, across }: Pick<PlacedFlight, 'head' | 'across'>,
  { count, spacing }: Pick<StringerPattern, 'count' | 'spacing'>,
  each: number,
): readonly number[] {
  const places = members
    .filter(({ role }) => role === 'stair upright')
    .map(({ box }) => {
      const [x, y] = [(box.x0 + box.x1) / 2 - head.x, (box.y0 + box.y1) / 2 - head.y]
      return x * across.x + y * across.y
    })
    .sort((a, b) => a - b)
  const loads = places.map(() => 0)
  for (let i = 0; i < count; i += 1) {
    const at = i * spacing + sectionOf('2x12').thickness / 2
    const load = count > 1 && (i === 0 || i === count - 1) ? each / 2 : each
    const next = places.findIndex((place) => place > at)
    const right = next === -1 ? places.length - 1 : Math.max(1, next)
    const [a, b] = [places[right - 1], places[right]]
    if (a === undefined || b === undefined || b === a) {
      loads[0] = (loads[0] ?? 0) + load
      continue
    }
    const share = (at - a) / (b - a)
    loads[right - 1] = (loads[right - 1] ?? 0) + load * (1 - share)
    loads[right] = (loads[right] ?? 0) + load * share
  }
  return loads
}
