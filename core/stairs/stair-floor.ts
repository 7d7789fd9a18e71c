import { isInside, partsInside } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt, type Layout, type Level } from '../layout/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { onFlight } from './place-flights.ts'
import type { DeckEdge, PlacedFlight, Spot, StairFloor } from './types.ts'

/** A foot counts as standing on a level from so far inside its edge. */
const INSIDE = inches(1)

/** How far out the floor before the lowest riser is measured: more than any landing that is asked for. */
const OUT = inches(60)

/** What stairs that leave from an edge come down to at a place: the highest level below that edge, else the ground. */
export function surfaceBelow(job: Job, layout: Layout, edge: DeckEdge, spot: Spot): number {
  return levelBelow(layout, edge, spot)?.deckTop ?? groundAt(job, spot.x, spot.y)
}

/** The highest level below an edge at a place; undefined where there is none but the ground. */
export function levelBelow(layout: Layout, edge: DeckEdge, spot: Spot): Level | undefined {
  return levelsBelow(layout, edge).find(({ outline }) => isInside(outline, spot))
}

/** The level that the last flight stands on, null for the ground; or that only a part of its foot stands on one. */
export function floorAt(
  layout: Layout,
  edge: DeckEdge,
  flight: PlacedFlight,
  riserBoard: Ticks,
): StairFloor | null | 'partly' {
  const foot = (across: number) => onFlight(flight, flight.run, across)
  const middle = foot(flight.width / 2)
  const sides = [foot(INSIDE), foot(flight.width - INSIDE)]
  const holding = (spots: readonly Spot[]) =>
    levelsBelow(layout, edge).find(({ outline }) => spots.some((spot) => isInside(outline, spot)))
  const level = holding([middle])
  if (level === undefined) return holding(sides) === undefined ? null : 'partly'
  if (!sides.every((spot) => isInside(level.outline, spot))) return 'partly'
  return { level: level.number, landing: ticks(Math.floor(roomBefore(level, flight) - riserBoard)) }
}

/** Of a level before the lowest rise cut, where there is least of it in the width of the flight. */
function roomBefore({ outline }: Level, flight: PlacedFlight): number {
  const rooms = [INSIDE, flight.width / 2, flight.width - INSIDE].map((across) => {
    const from = onFlight(flight, flight.run, across)
    const [first] = partsInside(outline, { from, to: onFlight(flight, flight.run + OUT, across) })
    return first === undefined ? 0 : Math.hypot(first.to.x - from.x, first.to.y - from.y)
  })
  return Math.min(...rooms)
}

function levelsBelow({ levels }: Layout, edge: DeckEdge): readonly Level[] {
  return levels.filter(({ deckTop }) => deckTop < edge.top).toSorted((a, b) => b.deckTop - a.deckTop)
}
