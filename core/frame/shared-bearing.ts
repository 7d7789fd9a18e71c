import type { Ticks } from '../units/index.ts'
import { extentOf, type JoistPlace, type JoistRoom, partsAt, placeBeside } from './joist-places.ts'

/** A joist's centre line. */
export interface JoistLine {
  readonly centre: number
  readonly low: number
  readonly high: number
}

/** What a board's end bears on a joist at least, where one joist serves two gaps: common practice, no source. */
const LEAST_BEARING = 16

/**
 * Joists for the gaps over which added ones are wanted. Where wanted ones would lie in one place, or in that of an end
 * joist or trimmer, one serves them all if every board's end bears 1/2 in on it; else as few as it takes stand face to
 * face, so that each end lies on one of them (common practice, no source).
 * @param fixed end joists and trimmers, which keep their place
 * @param wanted one right under each gap
 */
export function sharedBearing(
  room: JoistRoom,
  fixed: readonly JoistLine[],
  wanted: readonly JoistPlace[],
  gap: Ticks,
): readonly JoistPlace[] {
  const need = Math.min(gap / 2 + LEAST_BEARING, room.thickness / 2)
  return groupsOf(wanted, room.thickness).flatMap((group) => {
    const lines = group.map(lineOf)
    const beside = fixed.filter((one) => lines.some((line) => isBeside(one, line, 2 * room.thickness)))
    const isFree = (place: JoistPlace) => !beside.some((one) => isBeside(one, lineOf(place), room.thickness))
    for (const centres of choices(lines, beside, room.thickness)) {
      const places = centres.flatMap((centre) => placesAt(room, centre, group))
      const standing = [...beside, ...places.map(lineOf)]
      if (places.every(isFree) && lines.every((line) => bears(line, standing, need, room.thickness / 2)))
        return places
    }
    // they stay in each other, which is told as a fault
    return group
  })
}

export function lineOf(place: JoistPlace): JoistLine {
  return { centre: place.centre, ...extentOf(place.part) }
}

export function isBeside(a: JoistLine, b: JoistLine, least: number): boolean {
  return a.low < b.high && b.low < a.high && Math.abs(a.centre - b.centre) < least
}

/** Places each of which lies within a joist's thickness of another of its group. */
function groupsOf(places: readonly JoistPlace[], thickness: number): readonly (readonly JoistPlace[])[] {
  let groups: readonly (readonly JoistPlace[])[] = []
  for (const place of places) {
    const meets = (group: readonly JoistPlace[]) =>
      group.some((one) => isBeside(lineOf(one), lineOf(place), thickness))
    groups = [...groups.filter((group) => !meets(group)), [...groups.filter(meets).flat(), place]]
  }
  return groups
}

/** Centres to try, the fewest joists first: none, one in the middle, or a row face to face, free or against a fixed one. */
function choices(
  lines: readonly JoistLine[],
  beside: readonly JoistLine[],
  thickness: number,
): readonly (readonly number[])[] {
  const [first, last] = [
    Math.min(...lines.map(({ centre }) => centre)),
    Math.max(...lines.map(({ centre }) => centre)),
  ]
  const most = Math.ceil((last - first) / thickness) + 1
  const row = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i * thickness)
  const rows = Array.from({ length: most }, (_, i) => i + 1).flatMap((count) => {
    const reach = (count - 1) * thickness
    const starts = [
      Math.round((first + last - reach) / 2),
      first,
      last - reach,
      ...beside.flatMap(({ centre }) => [centre + thickness, centre - thickness - reach]),
    ]
    return starts.map((from) => row(from, count))
  })
  return [[], ...rows]
}

/** One on each part of a line beside which one of a group is wanted. */
function placesAt(room: JoistRoom, centre: number, group: readonly JoistPlace[]): readonly JoistPlace[] {
  const under = group[0]?.under
  return partsAt(room, centre)
    .map(extentOf)
    .filter((part) => group.some((one) => isBeside({ centre: 0, ...part }, { ...lineOf(one), centre: 0 }, 1)))
    .flatMap((part) => {
      const place = placeBeside(room, centre, part)
      return place === null ? [] : [under === undefined ? place : { ...place, under }]
    })
}

/** Whether joists lie under a gap and under enough of the board on each side of it. */
function bears(line: JoistLine, standing: readonly JoistLine[], need: number, half: number): boolean {
  let covered = line.centre - need
  const there = standing.filter((one) => one.low < line.high && line.low < one.high)
  for (const { centre } of there.toSorted((a, b) => a.centre - b.centre))
    if (centre - half <= covered) covered = Math.max(covered, centre + half)
  return covered >= line.centre + need
}
