import { insetBy, type Stretch, type StripPart, stretchesAt, stripParts } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { isBlunt, type ViewEdge, type ZoneView } from '../layout/index.ts'
import { inches } from '../units/index.ts'

/** Least distance of a joist's centre from an end joist's: common practice, no source. */
export const CLOSING_BAY = inches(3)

/** Where a joist lies, as its zone is seen along the joists. */
export interface JoistPlace {
  readonly centre: number
  readonly end: boolean
  readonly part: StripPart
  /** the edges of the view at which it starts and ends; null at a step of the outline */
  readonly startsAt: ViewEdge | null
  readonly endsAt: ViewEdge | null
  /** doubled beside an opening, whose headers it carries */
  readonly trimmer: boolean
  /** ids of the headers at which it starts and ends, beside an opening */
  readonly headers: readonly [string | null, string | null]
  /** its end laps the end of a ledger that it stands beside, instead of hanging from it */
  readonly laps: readonly [boolean, boolean]
  /** where it starts and ends over a beam because it is jointed there */
  readonly joints: readonly [JoistJoint | null, JoistJoint | null]
  /** 1 where joists start, one more beyond each joint */
  readonly run: number
  /** the joist that it goes on from, over a joint */
  readonly continues: JoistPlace | null
  /** added under a line at which boards of the decking end */
  readonly under?: 'border' | 'breaker'
}

/** How a joist meets the one that goes on from it over a beam, or hangs from a flush one with the other behind it. */
export interface JoistJoint {
  readonly beamId: string
  readonly kind: 'lapped' | 'butted' | 'hung'
  /** the beam's centre line, along the joist */
  readonly at: number
}

/** An opening as its zone is seen along the joists; its headers lie before and after it. */
export interface ViewOpening {
  readonly number: number
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

/** The two headers of an opening: where joists end before it, and where they go on after it. */
export function headerIds({ number }: ViewOpening): readonly [string, string] {
  return [`header-${number}a`, `header-${number}b`]
}

/** Headers and trimmers are doubled: IRC 2021 R502.10 asks it of longer ones; here of all. */
export const OPENING_PLIES = 2

/** A zone's room for joists. */
export interface JoistRoom {
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
  openings: readonly ViewOpening[] = [],
): readonly JoistPlace[] {
  const room = joistRoom(view, thickness)
  const ends = [...endJoists(room), ...openings.flatMap((opening) => trimmers(room, opening))]
  const inner = innerJoists(job, room, ends, extent).flatMap((place) => partedBy(place, openings, thickness))
  return [...ends.filter((one) => one.place !== null).flatMap((one) => one.place ?? []), ...inner].sort(
    inOrder,
  )
}

/** From left to right, and of one line from where joists start. */
export function inOrder(a: JoistPlace, b: JoistPlace): number {
  return a.centre - b.centre || a.part.left.low - b.part.left.low
}

/** The joist from which a line starts. */
export function firstOf(place: JoistPlace): JoistPlace {
  return place.continues === null ? place : firstOf(place.continues)
}

export function joistRoom(view: ZoneView, thickness: number): JoistRoom {
  const bands = (ledgers: boolean) =>
    view.edges.map(({ role, board, width }) =>
      role === 'side' || (board === 'ledger' && !ledgers) ? 0 : width,
    )
  const count = view.edges.length
  const besideSide = (i: number) => {
    const meet = [view.edges[(i + count - 1) % count], view.edges[i]]
    return (
      isBlunt(view, i) &&
      meet.some((edge) => edge?.board === 'end joist') &&
      meet.some((edge) => edge?.board === 'rim')
    )
  }
  return {
    view,
    thickness,
    inner: insetBy(view.polygon, bands(true), besideSide),
    toWall: insetBy(view.polygon, bands(false), besideSide),
  }
}

/** The place of a joist at a centre, where one lies beside a part; null where the zone has no room for it there. */
export function placeBeside(room: JoistRoom, centre: number, { low, high }: Span): JoistPlace | null {
  const part = partsAt(room, centre).find((one) => overlaps(extentOf(one), { low, high }))
  return part === undefined ? null : placeOf(room, centre, part, false)
}

/** A line that inner joists keep away from: an end joist, or that of the zone beside. */
interface EndLine {
  readonly centre: number
  readonly low: number
  readonly high: number
  readonly place: JoistPlace | null
}

/** Lines of end joists, those of zones beside among them. */
export function sideLines(room: JoistRoom): readonly Omit<EndLine, 'place'>[] {
  return endJoists(room)
}

function endJoists(shape: JoistRoom): readonly EndLine[] {
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

/** Two joists on either side of an opening, along the whole of their line. */
function trimmers(shape: JoistRoom, { x0, x1, y0, y1 }: ViewOpening): readonly EndLine[] {
  const places = Array.from({ length: OPENING_PLIES }, (_, i) => (i + 0.5) * shape.thickness)
  return [...places.map((off) => x0 - off), ...places.map((off) => x1 + off)].flatMap((centre) =>
    partsAt(shape, centre)
      .filter((part) => overlaps(extentOf(part), { low: y0, high: y1 }))
      .map((part) => ({
        centre,
        ...extentOf(part),
        place: { ...placeOf(shape, centre, part, false), trimmer: true },
      })),
  )
}

/** A joist that an opening cuts in two, each part ending at a header. */
export function partedBy(
  place: JoistPlace,
  openings: readonly ViewOpening[],
  thickness: number,
): readonly JoistPlace[] {
  const { low, high } = extentOf(place.part)
  const opening = openings.find(
    ({ x0, x1, y0, y1 }) => place.centre > x0 && place.centre < x1 && low < y0 && high > y1,
  )
  if (opening === undefined) return [place]
  const header = OPENING_PLIES * thickness
  const [before, after] = headerIds(opening)
  const { left, right } = place.part
  const until = opening.y0 - header
  const from = opening.y1 + header
  const first: JoistPlace = {
    ...place,
    part: { left: { ...left, high: until }, right: { ...right, high: until } },
    endsAt: null,
    headers: [place.headers[0], before],
    laps: [place.laps[0], false],
  }
  const second: JoistPlace = {
    ...place,
    part: { left: { ...left, low: from }, right: { ...right, low: from } },
    startsAt: null,
    headers: [after, place.headers[1]],
    laps: [false, place.laps[1]],
  }
  // a second opening further along may cut the rest again
  return [first, ...partedBy(second, openings, thickness)]
}

/** An end joist laps the end of the ledger at its edge's corner: common practice, no source. */
function lapped(shape: JoistRoom, place: JoistPlace, beside: readonly number[]): JoistPlace {
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
  shape: JoistRoom,
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
      const near = nearestOf(ends, reach, centre)
      if (near === null) {
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

/** The nearest line that a joist would stand too near to. */
function nearestOf(ends: readonly EndLine[], reach: Span, centre: number): EndLine | null {
  const off = (end: EndLine) => Math.abs(end.centre - centre)
  const near = ends.filter((end) => overlaps(end, reach) && off(end) < CLOSING_BAY)
  return near.reduce<EndLine | null>(
    (best, end) => (best === null || off(end) < off(best) ? end : best),
    null,
  )
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

/** Parts of a line in a zone that have room for a joist's whole thickness. */
export function partsAt({ inner, thickness }: JoistRoom, centre: number): readonly StripPart[] {
  return stripParts(inner.polygon, centre - thickness / 2, centre + thickness / 2)
}

function placeOf(room: JoistRoom, centre: number, part: StripPart, end: boolean): JoistPlace {
  return {
    centre,
    end,
    part,
    startsAt: edgeMet(room, centre, part, 'lowEdge'),
    endsAt: edgeMet(room, centre, part, 'highEdge'),
    trimmer: false,
    headers: [null, null],
    laps: [false, false],
    joints: [null, null],
    run: 1,
    continues: null,
  }
}

/** Where a joist's end spans a corner, the edge at its middle; where the corner lies right there, that which it hangs from. */
function edgeMet(
  { view, inner }: JoistRoom,
  centre: number,
  { left, right }: StripPart,
  end: 'lowEdge' | 'highEdge',
): ViewEdge | null {
  const edgeOf = (stretch: Stretch) => view.edges[inner.edgeOf[stretch[end]] ?? -1] ?? null
  const sides = [edgeOf(left), edgeOf(right)].filter((edge) => edge !== null)
  if (sides.length < 2 || sides[0] === sides[1]) return sides[0] ?? null
  const reach = extentOf({ left, right })
  const middle = ([-1, 1] as const).flatMap((side) =>
    stretchesAt(inner.polygon, centre, side).filter((stretch) => overlaps(stretch, reach)),
  )
  const met = middle.map(edgeOf).filter((edge) => edge !== null)
  return met.find(({ board, steep }) => board === 'ledger' || steep) ?? met[0] ?? sides[0] ?? null
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
