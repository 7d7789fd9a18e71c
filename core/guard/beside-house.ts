import { edgeAt, type PlanePoint, type Segment, turn } from '../geometry/index.ts'
import type { Level } from '../layout/index.ts'
import { onFlight, type StairPlan } from '../stairs/index.ts'
import type { HouseBeside, HouseSide } from './types.ts'

/** Farther than any deck is long, ticks. */
const FAR = 1e6

/** Places nearer to a line than this, in ticks, lie on it. */
const NOISE = 1

/** Of a wall that stands along a side: rounding. */
const SLANT = 1e-6

/**
 * Whether the house stands along a side, so near that no post has room before it; null where it does not. A wall goes on
 * where the deck ends at an outer corner, for nothing says how far: as strings of the layout take it too.
 * Where the stairs themselves go past that line, the wall has ended.
 * @param stairs those that it is a side of
 * @param out a unit vector, from the side away from them
 * @param room what a post takes
 */
export function besideHouse(
  levels: readonly Level[],
  stairs: StairPlan,
  side: Segment,
  out: PlanePoint,
  room: number,
): HouseSide | null {
  const built = placesOf(stairs)
  const found = levels.flatMap(({ outline, edges }) =>
    edges.flatMap(({ kind }, i): readonly HouseSide[] => {
      if (kind !== 'wall') return []
      const wall = edgeAt(outline, i)
      const length = Math.hypot(wall.to.x - wall.from.x, wall.to.y - wall.from.y)
      // of an outline of positive area the house is at the right of the way along a wall
      const faces = (wall.to.y - wall.from.y) * out.x - (wall.to.x - wall.from.x) * out.y
      if (faces < length * (1 - SLANT)) return []
      const off = [side.from, side.to].map(
        ({ x, y }) => (wall.from.x - x) * out.x + (wall.from.y - y) * out.y,
      )
      if (off.some((one) => one < -NOISE || one >= room)) return []
      const along = [side.from, side.to].map(
        ({ x, y }) =>
          ((x - wall.from.x) * (wall.to.x - wall.from.x) + (y - wall.from.y) * (wall.to.y - wall.from.y)) /
          length,
      )
      const [low, high] = [Math.min(...along), Math.max(...along)]
      const count = edges.length
      const goesOn = (beside: number, corner: number) =>
        edges[(beside + count) % count]?.kind === 'open' && juts(outline, corner)
      const from = goesOn(i - 1, i) ? -FAR : 0
      const to = goesOn(i + 1, i + 1) ? FAR : length
      if (low >= -NOISE && high <= length + NOISE) return ['wall']
      const ends = built.some(({ x, y }) => (wall.from.x - x) * out.x + (wall.from.y - y) * out.y < -NOISE)
      return !ends && low >= from - NOISE && high <= to + NOISE ? ['wall going on'] : []
    }),
  )
  return found.find((one) => one === 'wall') ?? found[0] ?? null
}

/** Corners of the flights and of the landing. */
function placesOf({ flights, platform }: StairPlan): readonly PlanePoint[] {
  const parts = [
    ...flights.map((flight) => ({ ...flight, depth: flight.run })),
    ...(platform === null ? [] : [{ ...platform, head: platform.corner }]),
  ]
  return parts.flatMap((part) => [
    onFlight(part, 0, 0),
    onFlight(part, 0, part.width),
    onFlight(part, part.depth, 0),
    onFlight(part, part.depth, part.width),
  ])
}

function juts(outline: Level['outline'], corner: number): boolean {
  const { from, to } = edgeAt(outline, corner - 1)
  return turn(from, to, edgeAt(outline, corner).to) > 0
}

/** The sides that the house closes, as one tells of them: "flight 1 and the landing of stairs 1". */
export function houseSideWords(house: readonly HouseBeside[]): string {
  return house
    .map(({ flight, stairs }) => (flight === null ? `the landing of stairs ${stairs}` : `flight ${flight}`))
    .join(' and ')
}
