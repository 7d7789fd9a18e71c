import { insetBy, type Stretch, type StripPart, stripParts } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import type { ViewEdge, ZoneView } from '../layout/index.ts'
import { inches } from '../units/index.ts'

/** Least distance of a joist's centre from an end joist's: common practice, no source. */
const CLOSING_BAY = inches(3)

/** Where a joist lies, as its zone is seen along the joists. */
export interface JoistPlace {
  readonly centre: number
  readonly end: boolean
  readonly part: StripPart
  /** the edges of the view at which it starts and ends; null at a step of the outline */
  readonly startsAt: ViewEdge | null
  readonly endsAt: ViewEdge | null
  /** its end laps the end of a ledger that it stands beside, instead of hanging from it */
  readonly laps: readonly [boolean, boolean]
}

interface Shape {
  readonly view: ZoneView
  readonly thickness: number
  readonly inner: ReturnType<typeof insetBy>
  /** the same, but as far as the wall where a ledger lies */
  readonly toWall: ReturnType<typeof insetBy>
}

/**
 * Joists of a zone from left to right: an end joist inside each side, its outer face on the edge, and joists at every
 * spacing from the outer face of the deck's end from which it is laid out. None stands within 3 in of an end joist's
 * centre; where the bay would then be wider than the spacing, one stands at 3 in (common practice, no source).
 * @param extent ends of the whole deck, across the joists
 */
export function joistPlaces(
  job: Job,
  view: ZoneView,
  extent: readonly [number, number],
  thickness: number,
): readonly JoistPlace[] {
  const bands = (ledgers: boolean) =>
    view.edges.map(({ role, board, width }) =>
      role === 'side' || (board === 'ledger' && !ledgers) ? 0 : width,
    )
  const shape: Shape = {
    view,
    thickness,
    inner: insetBy(view.polygon, bands(true)),
    toWall: insetBy(view.polygon, bands(false)),
  }
  const ends = endJoists(shape)
  const inner = innerJoists(job, shape, ends, extent)
  return [...ends.filter((one) => one.place !== null).flatMap((one) => one.place ?? []), ...inner].sort(
    (a, b) => a.centre - b.centre || a.part.left.low - b.part.left.low,
  )
}

/** A line that inner joists keep away from: an end joist, or that of the zone beside. */
interface EndLine {
  readonly centre: number
  readonly low: number
  readonly high: number
  readonly place: JoistPlace | null
}

function endJoists(shape: Shape): readonly EndLine[] {
  const { view, thickness } = shape
  const lines: EndLine[] = []
  for (const [i, edge] of view.edges.entries()) {
    const from = view.polygon[i]
    const to = view.polygon[(i + 1) % view.polygon.length]
    if (edge.role !== 'side' || from === undefined || to === undefined) continue
    const inward = to.y > from.y ? -1 : 1
    const [low, high] = [Math.min(from.y, to.y), Math.max(from.y, to.y)]
    if (edge.board === 'none') {
      lines.push({ centre: from.x - (inward * thickness) / 2, low, high, place: null })
      continue
    }
    const centre = from.x + (inward * thickness) / 2
    for (const part of partsAt(shape, centre)) {
      const reach = extentOf(part)
      if (reach.low >= high || reach.high <= low) continue
      if (lines.some((one) => one.centre === centre && one.low === reach.low && one.high === reach.high))
        continue
      const count = view.edges.length
      const beside = [(i + count - 1) % count, (i + 1) % count]
      const place = lapped(shape, placeOf(shape, centre, part, true), beside)
      lines.push({ centre, ...reach, place })
    }
  }
  return lines
}

/** An end joist laps the end of the ledger at its edge's corner: common practice, no source. */
function lapped(shape: Shape, place: JoistPlace, beside: readonly number[]): JoistPlace {
  const isLap = (edge: ViewEdge | null) =>
    edge?.board === 'ledger' && beside.some((i) => shape.view.edges[i] === edge)
  const laps: readonly [boolean, boolean] = [isLap(place.startsAt), isLap(place.endsAt)]
  if (!laps[0] && !laps[1]) return place
  const half = shape.thickness / 2
  const reach = extentOf(place.part)
  const longer = stripParts(shape.toWall.polygon, place.centre - half, place.centre + half).find((part) => {
    const other = extentOf(part)
    return other.low < reach.high && other.high > reach.low
  })
  if (longer === undefined) return place
  const side = (own: Stretch, other: Stretch): Stretch => ({
    ...own,
    low: laps[0] ? other.low : own.low,
    high: laps[1] ? other.high : own.high,
  })
  return {
    ...place,
    laps,
    part: { left: side(place.part.left, longer.left), right: side(place.part.right, longer.right) },
  }
}

function innerJoists(
  job: Job,
  shape: Shape,
  ends: readonly EndLine[],
  [first, last]: readonly [number, number],
): readonly JoistPlace[] {
  const { spacing, layoutFrom } = job.frame.joists
  const way = layoutFrom === 'left' ? 1 : -1
  const start = layoutFrom === 'left' ? first : last
  const placed: JoistPlace[] = []
  const put = (centre: number, part: StripPart) => placed.push(placeOf(shape, centre, part, false))
  for (let step: number = spacing; step < last - first; step += spacing) {
    const centre = start + way * step
    for (const part of partsAt(shape, centre)) {
      const reach = extentOf(part)
      const near = ends.find((end) => overlaps(end, reach) && Math.abs(end.centre - centre) < CLOSING_BAY)
      if (near === undefined) {
        put(centre, part)
        continue
      }
      const ahead = (near.centre - centre) * way
      if (ahead === 0) continue
      const before = ahead > 0
      const neighbour = before
        ? nearest([...placed.map(lineOf), ...ends], reach, near.centre, -way)
        : nearest([...ends, { centre: centre + way * spacing, ...reach }], reach, near.centre, way)
      if (neighbour === null || Math.abs(neighbour - near.centre) <= spacing) continue
      const moved = near.centre + (before ? -1 : 1) * way * CLOSING_BAY
      const free = (other: EndLine) => other === near || Math.abs(other.centre - moved) >= CLOSING_BAY
      for (const other of partsAt(shape, moved)) {
        const there = extentOf(other)
        if (overlaps(there, reach) && ends.every((end) => free(end) || !overlaps(end, there)))
          put(moved, other)
      }
    }
  }
  return placed
}

function lineOf({ centre, part }: JoistPlace) {
  return { centre, ...extentOf(part) }
}

/** Centre of the line nearest to a place on one side of it, among those that stand beside a reach. */
function nearest(
  lines: readonly { readonly centre: number; readonly low: number; readonly high: number }[],
  reach: { readonly low: number; readonly high: number },
  from: number,
  way: number,
): number | null {
  const distances = lines
    .filter((line) => overlaps(line, reach) && (line.centre - from) * way > 0)
    .map((line) => Math.abs(line.centre - from))
  return distances.length === 0 ? null : from + way * Math.min(...distances)
}

function partsAt({ inner, thickness }: Shape, centre: number): readonly StripPart[] {
  return stripParts(inner.polygon, centre - thickness / 2, centre + thickness / 2)
}

function placeOf({ view, inner }: Shape, centre: number, part: StripPart, end: boolean): JoistPlace {
  const edgeOf = (index: number) => {
    const own = inner.edgeOf[index]
    return own === null || own === undefined ? null : (view.edges[own] ?? null)
  }
  return {
    centre,
    end,
    part,
    startsAt: edgeOf(part.left.lowEdge) ?? edgeOf(part.right.lowEdge),
    endsAt: edgeOf(part.left.highEdge) ?? edgeOf(part.right.highEdge),
    laps: [false, false],
  }
}

/** From its lowest point to its highest. */
export function extentOf({ left, right }: StripPart): { readonly low: number; readonly high: number } {
  return { low: Math.min(left.low, right.low), high: Math.max(left.high, right.high) }
}

interface Span {
  readonly low: number
  readonly high: number
}

function overlaps(a: Span, b: Span): boolean {
  return a.low < b.high && b.low < a.high
}
