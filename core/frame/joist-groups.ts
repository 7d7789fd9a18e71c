import { isInside, type Polygon } from '../geometry/index.ts'
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

/** Half of the bay on either side, where another joist stands beside it; at a side as far as the outer face. */
function carriedWidth(joist: PlacedJoist, all: readonly PlacedJoist[], polygon: Polygon): number {
  const { centre } = joist.place
  const beside = all.filter(
    (other) =>
      other !== joist &&
      other.from < joist.to &&
      joist.from < other.to &&
      (!joist.place.end || deckBetween(joist, other, polygon)),
  )
  const left = Math.max(...beside.filter((one) => one.place.centre < centre).map((one) => one.place.centre))
  const right = Math.min(...beside.filter((one) => one.place.centre > centre).map((one) => one.place.centre))
  const half = 24
  return (
    (Number.isFinite(left) ? (centre - left) / 2 : half) +
    (Number.isFinite(right) ? (right - centre) / 2 : half)
  )
}

/** Whether the zone has deck between an end joist and another; beyond its side another zone may lie. */
function deckBetween(joist: PlacedJoist, other: PlacedJoist, polygon: Polygon): boolean {
  const middle = (Math.max(joist.from, other.from) + Math.min(joist.to, other.to)) / 2
  const aside = Math.sign(other.place.centre - joist.place.centre) * BESIDE
  return isInside(polygon, { x: joist.place.centre + aside, y: middle })
}

/** Past an end joist's outer face, ticks. */
const BESIDE = 32
