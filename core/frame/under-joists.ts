import type { Fault } from '../job/index.ts'
import type { Ticks } from '../units/index.ts'
import {
  CLOSING_BAY,
  extentOf,
  inOrder,
  type JoistPlace,
  type JoistRoom,
  partedBy,
  partsAt,
  placeBeside,
  sideLines,
  type ViewOpening,
} from './joist-places.ts'
import type { PlacedJoist } from './joists.ts'
import type { UnderLine } from './laying.ts'
import { isBeside, type JoistLine, lineOf, sharedBearing } from './shared-bearing.ts'

/**
 * Joists with those that the decking asks for. One of the layout that would stand within 3 in of an added one gives way
 * to it; where that leaves a bay wider than the spacing, one stands 3 in beside it (common practice, no source). An
 * opening cuts them as it cuts those of the layout.
 */
export function withUnderJoists(
  room: JoistRoom,
  places: readonly JoistPlace[],
  lines: readonly UnderLine[],
  openings: readonly ViewOpening[],
  { spacing, gap }: { readonly spacing: Ticks; readonly gap: Ticks },
): readonly JoistPlace[] {
  if (lines.length === 0) return places
  const isFixed = ({ end, trimmer }: JoistPlace) => end || trimmer
  const fixed = [...sideLines(room), ...places.filter(isFixed).map(lineOf)]
  const wanted = lines.flatMap((line) => placesOf(room, line))
  const cut = (place: JoistPlace) => partedBy(place, openings, room.thickness)
  const added = sharedBearing(room, fixed, wanted, gap).flatMap(cut)
  const near = (place: JoistPlace) =>
    !isFixed(place) && added.some((other) => isBeside(lineOf(place), lineOf(other), CLOSING_BAY))
  const kept = [...places.filter((place) => !near(place)), ...added]
  const closing: JoistPlace[] = []
  for (const gone of places.filter(near)) {
    const around = [...fixed, ...[...kept, ...closing].map(lineOf)]
    const closed = closingJoist(room, lineOf(gone), around, spacing)
    if (closed !== null) closing.push(...cut(closed))
  }
  return [...kept, ...closing].sort(inOrder)
}

/** Borders and breakers whose joists have no room: one of a zone's would stand in another. */
export function underFaults(
  joists: readonly Pick<PlacedJoist, 'place'>[],
  thickness: number,
): readonly Fault[] {
  const crowded = joists.find(
    ({ place }) =>
      place.under !== undefined &&
      joists.some(
        (other) => other.place !== place && isBeside(lineOf(other.place), lineOf(place), thickness),
      ),
  )
  if (crowded === undefined) return []
  const isBorder = crowded.place.under === 'border'
  return [
    {
      path: isBorder ? 'decking.border' : 'decking.breakers',
      message: `a joist under the end of boards at a ${crowded.place.under} would stand in the one beside it`,
      fix: isBorder
        ? 'make that part of the deck wider, take another number of courses, or leave the border out'
        : 'lay the breaker further from what stands beside it',
    },
  ]
}

/** One along each part of its line that has room; the middle of an odd gap lies half a tick off it. */
function placesOf(room: JoistRoom, { centre: middle, low, high, under }: UnderLine): readonly JoistPlace[] {
  const centre = Math.round(middle)
  return partsAt(room, centre)
    .map(extentOf)
    .filter((part) => part.low < high && part.high > low)
    .flatMap((part) => {
      const place = placeBeside(room, centre, part)
      return place === null ? [] : [{ ...place, under }]
    })
}

/** A joist that closes the bay which one that gave way leaves too wide; null where none is. */
function closingJoist(
  room: JoistRoom,
  gone: JoistLine,
  around: readonly JoistLine[],
  spacing: number,
): JoistPlace | null {
  const beside = around.filter(({ low, high }) => low < gone.high && gone.low < high)
  const left = Math.max(...beside.filter(({ centre }) => centre <= gone.centre).map(({ centre }) => centre))
  const right = Math.min(...beside.filter(({ centre }) => centre > gone.centre).map(({ centre }) => centre))
  if (!Number.isFinite(left) || !Number.isFinite(right) || right - left <= spacing) return null
  const atRight = right - gone.centre < gone.centre - left
  return placeBeside(room, atRight ? right - CLOSING_BAY : left + CLOSING_BAY, gone)
}
