import type { Polygon } from '../geometry/index.ts'
import type { PlacedJoist } from './joists.ts'
import type { JoistGroup, JoistLine } from './types.ts'

/** Joists of a zone by what carries them; among those the ones that lie alike are one line. */
export function joistGroups(
  zone: string,
  polygon: Polygon,
  joists: readonly PlacedJoist[],
  firstNumber: number,
): readonly JoistGroup[] {
  const widths = new Map(joists.map((joist) => [joist, carriedWidth(joist, joists, polygon)]))
  const groups = new Map<string, PlacedJoist[]>()
  for (const joist of joists) {
    const key = [joist.place.run, ...joist.supports.map(({ id }) => id)].join(' ')
    groups.set(key, [...(groups.get(key) ?? []), joist])
  }
  return [...groups.values()].map((own, i) => ({
    id: firstNumber + i === 1 ? 'joists' : `joists-${firstNumber + i}`,
    zone: zoneOf(zone, own),
    supports: own[0]?.supports.map(({ id }) => id) ?? [],
    lines: linesOf(own, widths),
  }))
}

/** Runs that meet over a beam load it as two zones do that end on it. */
function zoneOf(zone: string, [first]: readonly PlacedJoist[]): string {
  const run = first?.place.run ?? 1
  return run === 1 ? zone : `${zone} run ${run}`
}

function linesOf(
  joists: readonly PlacedJoist[],
  widths: ReadonlyMap<PlacedJoist, number>,
): readonly JoistLine[] {
  const lines = new Map<string, PlacedJoist[]>()
  for (const joist of joists) {
    const places = [joist.from, joist.to, ...joist.supports.map(({ at }) => at)].map((n) => n.toFixed(2))
    const key = [...places, ...joist.supports.map(({ seat }) => seat)].join(' ')
    lines.set(key, [...(lines.get(key) ?? []), joist])
  }
  return [...lines.values()].flatMap((own) => {
    const [first] = own
    if (first === undefined) return []
    return [
      {
        memberIds: own.map(({ member }) => member.id),
        from: first.from,
        to: first.to,
        supports: first.supports,
        widths: own.map((joist) => widths.get(joist) ?? 0),
      },
    ]
  })
}

/** Half of the bay on either side: to the next joist with deck between, or to the edge of a notch before it. */
function carriedWidth(joist: PlacedJoist, all: readonly PlacedJoist[], polygon: Polygon): number {
  return carriedTo(joist, all, polygon, -1) + carriedTo(joist, all, polygon, 1)
}

function carriedTo(joist: PlacedJoist, all: readonly PlacedJoist[], polygon: Polygon, way: 1 | -1): number {
  const { centre } = joist.place
  const off = (other: PlacedJoist) => (other.place.centre - centre) * way
  const beside = all
    .filter((other) => off(other) > 0 && other.from < joist.to && joist.from < other.to)
    .sort((a, b) => off(a) - off(b))
  const [nearest] = beside
  if (nearest === undefined) return HALF_JOIST
  const reaches = (other: PlacedJoist) => {
    const low = Math.max(joist.from, other.from)
    const high = Math.min(joist.to, other.to)
    return heightsBetween(polygon, low, high).map((y) => deckBeside(polygon, centre, y, way))
  }
  const bay = beside.find((other) => reaches(other).some((reach) => reach >= off(other)))
  if (bay !== undefined) return off(bay) / 2
  // across a notch there is no bay: the board along it carries the other half
  return Math.max(HALF_JOIST, Math.min(off(nearest), Math.max(...reaches(nearest))) / 2)
}

/** Heights just inside of those between which the deck's edges run straight. */
function heightsBetween(polygon: Polygon, low: number, high: number): readonly number[] {
  const within = polygon.map(({ y }) => y).filter((y) => y > low && y < high)
  const stops = [...new Set([low, ...within, high])].sort((a, b) => a - b)
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i] ?? to
    const inside = Math.min(1, (to - from) / 4)
    return [from + inside, to - inside]
  })
}

/** How far the deck goes from a place to one side. */
function deckBeside(polygon: Polygon, x: number, y: number, way: 1 | -1): number {
  const offs = polygon.flatMap((from, i) => {
    const to = polygon[(i + 1) % polygon.length] ?? from
    if (from.y > y === to.y > y) return []
    const off = (from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y) - x) * way
    return off > 0 ? [off] : []
  })
  // with an even number of edges beyond it the place itself lies outside
  return offs.length % 2 === 0 ? 0 : Math.min(...offs)
}

/** What an outer joist carries beside its middle. */
const HALF_JOIST = 24
