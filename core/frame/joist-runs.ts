import { isInside } from '../geometry/index.ts'
import type { Job, JoistOverMiddle } from '../job/index.ts'
import { inches } from '../units/index.ts'
import {
  CLOSING_BAY,
  extentOf,
  firstOf,
  inOrder,
  type JoistJoint,
  type JoistPlace,
  type JoistRoom,
  placeBeside,
  sideLines,
} from './joist-places.ts'

/** Least overlap of two joists over a beam, IRC 2021 R502.6.1: 3 in, centred on the beam. */
const LEAST_LAP = inches(3)

/** A beam that a joist crosses, with joists on both sides of it. */
export interface MiddleBeam {
  readonly id: string
  /** its centre line, along the joist */
  readonly at: number
  /** half of its thickness, along the joist */
  readonly half: number
  /** between the joists, which are cut at its faces */
  readonly flush: boolean
}

/** How far a joist runs past the centre of the beam over which it is jointed: to the far face of a thick one. */
function pastCentre(kind: JoistJoint['kind'], half: number): number {
  if (kind === 'hung') return -half
  return kind === 'lapped' ? Math.max(LEAST_LAP / 2, half) : 0
}

/**
 * Joists in the pieces that the job asks for: whole, or jointed over middle beams. Lapped ones stand one thickness
 * further from the end that the tape is hooked on in every second run, so that the two lie side by side over the beam.
 * End joists, trimmers and joists that meet a header are butted, for their line must stay straight; where the bay beside
 * such a line would come out wider than the spacing, one more joist stands 3 in from it.
 * @param middleBeams beams that a joist crosses between two others, level and square to it, in its order
 */
export function jointedPlaces(
  job: Job,
  room: JoistRoom,
  places: readonly JoistPlace[],
  middleBeams: (place: JoistPlace) => readonly MiddleBeam[],
): readonly JoistPlace[] {
  const wish = job.frame.joists.overMiddle
  const crossed = new Map(places.map((place) => [place, middleBeams(place)]))
  if ([...crossed.values()].every((beams) => beams.length === 0)) return places
  const shared = new Set<string>()
  for (const [place, beams] of crossed)
    if (!isStraight(place)) for (const { id } of neededBeams(job, wish, place, beams)) shared.add(id)
  const way = job.frame.joists.layoutFrom === 'left' ? 1 : -1
  const pieces = places.flatMap((place) => {
    const beams = crossed.get(place) ?? []
    const straight = isStraight(place)
    const jointed = straight ? neededBeams(job, wish, place, beams) : beams.filter(({ id }) => shared.has(id))
    if (jointed.length === 0) return [place]
    const beside =
      straight || wish === 'butted' || jointed.every(({ flush }) => flush)
        ? null
        : besideOf(room, place, way * room.thickness, jointed, middleBeams)
    return beside === null
      ? inPieces('butted', [place, place], jointed)
      : inPieces('lapped', [place, beside], jointed)
  })
  return [...pieces, ...closing(job, room, pieces, way)].sort(inOrder)
}

/** Whether a joist's line must go straight on over a beam: boards of the decking may end over it. */
function isStraight({ end, trimmer, headers, under }: JoistPlace): boolean {
  return end || trimmer || under !== undefined || headers.some((header) => header !== null)
}

/** Over which of the beams a joist is jointed for its own sake: over all that are asked, or as few as its stock needs. */
function neededBeams(
  { frame }: Job,
  wish: JoistOverMiddle,
  place: JoistPlace,
  beams: readonly MiddleBeam[],
): readonly MiddleBeam[] {
  if (wish === 'one piece') return beams.filter(({ flush }) => flush)
  if (wish !== 'by stock') return beams
  const { longest } = frame.joists
  const { low, high } = extentOf(place.part)
  const kind = isStraight(place) ? 'butted' : 'lapped'
  const past = ({ flush, half }: MiddleBeam) => pastCentre(flush ? 'hung' : kind, half)
  const needed: MiddleBeam[] = []
  let start = low
  for (;;) {
    const ahead = beams.filter(({ at }) => at > start && at > (needed.at(-1)?.at ?? low))
    const nextFlush = ahead.find(({ flush }) => flush)
    const end = nextFlush === undefined ? high : nextFlush.at + past(nextFlush)
    const within = ahead.filter((beam) => beam.at <= end && beam.at + past(beam) - start <= longest)
    const next = end - start <= longest ? nextFlush : (within.at(-1) ?? ahead[0])
    if (next === undefined) return needed
    needed.push(next)
    start = next.at - past(next)
  }
}

/** The same joist one thickness aside, where it crosses the same beams there; else null. */
function besideOf(
  room: JoistRoom,
  place: JoistPlace,
  aside: number,
  jointed: readonly MiddleBeam[],
  middleBeams: (place: JoistPlace) => readonly MiddleBeam[],
): JoistPlace | null {
  const moved = placeBeside(room, place.centre + aside, extentOf(place.part))
  if (moved === null || ![place, moved].every((one) => hasRoom(one, jointed))) return null
  const crossed = new Set(middleBeams(moved).map(({ id }) => id))
  return jointed.every(({ id }) => crossed.has(id)) ? moved : null
}

/** Whether both long edges of a joist are there as far as it laps. */
function hasRoom({ part: { left, right } }: JoistPlace, beams: readonly MiddleBeam[]): boolean {
  return beams.every(({ at, half, flush }) => {
    if (flush) return true
    const past = pastCentre('lapped', half)
    return Math.max(left.low, right.low) <= at - past && Math.min(left.high, right.high) >= at + past
  })
}

/** A joist from beam to beam, its odd runs on the first line and its even ones on the second. */
function inPieces(
  kind: JoistJoint['kind'],
  [odd, even]: readonly [JoistPlace, JoistPlace],
  beams: readonly MiddleBeam[],
): readonly JoistPlace[] {
  const joints = beams.map(({ id, at, half, flush }) => {
    const own = flush ? ('hung' as const) : kind
    return { beamId: id, kind: own, at, past: pastCentre(own, half) }
  })
  let before: JoistPlace | null = null
  return [...joints, null].map((next, i): JoistPlace => {
    const behind = joints.slice(0, i)
    // beyond a flush beam joists hang where the tape says again
    const laps = behind.slice(behind.findLastIndex((joint) => joint.kind === 'hung') + 1)
    const source = laps.length % 2 === 0 ? odd : even
    before = { ...between(source, joints[i - 1] ?? null, next), run: i + 1, continues: before }
    return before
  })
}

/** The part of a joist from one joint to another, or to its own end. */
function between(
  source: JoistPlace,
  first: (JoistJoint & { readonly past: number }) | null,
  last: (JoistJoint & { readonly past: number }) | null,
): JoistPlace {
  const { left, right } = source.part
  const low = first === null ? null : first.at - first.past
  const high = last === null ? null : last.at + last.past
  const cut = (own: typeof left) => ({ ...own, low: low ?? own.low, high: high ?? own.high })
  return {
    ...source,
    part: { left: cut(left), right: cut(right) },
    startsAt: first === null ? source.startsAt : null,
    endsAt: last === null ? source.endsAt : null,
    headers: [first === null ? source.headers[0] : null, last === null ? source.headers[1] : null],
    laps: [first === null && source.laps[0], last === null && source.laps[1]],
    joints: [asJoint(first), asJoint(last)],
  }
}

function asJoint(joint: JoistJoint | null): JoistJoint | null {
  return joint === null ? null : { beamId: joint.beamId, kind: joint.kind, at: joint.at }
}

/**
 * Joists that stand 3 in from a line beside which lapped ones have moved away, so far that the bay between would be
 * wider than the spacing, if only for a part of its length: beside a line that stays straight, or one that a further lap
 * has moved back.
 */
function closing(
  { frame }: Job,
  room: JoistRoom,
  pieces: readonly JoistPlace[],
  way: number,
): readonly JoistPlace[] {
  const lines = [
    ...pieces.map((piece) => ({ centre: piece.centre, ...carriedReach(piece) })),
    ...sideLines(room),
  ]
  return pieces.flatMap((piece): readonly JoistPlace[] => {
    const lapped = piece.joints.some((joint) => joint?.kind === 'lapped')
    if (!lapped || firstOf(piece).centre === piece.centre) return []
    return baysBefore(room, lines, piece, way)
      .filter(({ bay }) => bay > frame.joists.spacing)
      .flatMap(({ bay, y }): readonly JoistPlace[] => {
        const moved = placeBeside(room, piece.centre - way * (bay - CLOSING_BAY), { low: y, high: y + 1 })
        return moved === null ? [] : [jointedAs(piece, moved)]
      })
      .filter((one, i, all) => all.findIndex((other) => inOrder(one, other) === 0) === i)
  })
}

/** A joist with the joints of the one that it stands beside, but where its own line ends before it comes to the beam. */
function jointedAs({ part: beside, joints, run }: JoistPlace, whole: JoistPlace): JoistPlace {
  const { left, right } = whole.part
  const first = Math.max(left.low, right.low) <= beside.left.low ? joints[0] : null
  const last = Math.min(left.high, right.high) >= beside.left.high ? joints[1] : null
  const cut = (own: typeof left, other: typeof left) => ({
    ...own,
    low: first === null ? own.low : other.low,
    high: last === null ? own.high : other.high,
  })
  return {
    ...whole,
    part: { left: cut(left, beside.left), right: cut(right, beside.right) },
    startsAt: first === null ? whole.startsAt : null,
    endsAt: last === null ? whole.endsAt : null,
    joints: [first, last],
    run,
  }
}

/** Widths of the bays that a piece ends, as the tape goes, and a height in each stretch along it where one begins. */
function baysBefore(
  { view }: JoistRoom,
  lines: readonly { readonly centre: number; readonly low: number; readonly high: number }[],
  piece: JoistPlace,
  way: number,
): readonly { readonly bay: number; readonly y: number }[] {
  const own = carriedReach(piece)
  const before = lines.filter(
    ({ centre, low, high }) => (piece.centre - centre) * way > 0 && low < own.high && own.low < high,
  )
  const within = before.flatMap(({ low, high }) => [low, high]).filter((y) => y > own.low && y < own.high)
  const stops = [...new Set([own.low, ...within, own.high])].sort((a, b) => a - b)
  return stops.slice(1).flatMap((high, i) => {
    const y = ((stops[i] ?? high) + high) / 2
    const beside = before.filter((line) => line.low < y && y < line.high)
    const bay = Math.min(...beside.map(({ centre }) => (piece.centre - centre) * way))
    // beyond a notch another part of the zone begins
    const isDeck = (off: number) => isInside(view.polygon, { x: piece.centre - way * off, y })
    return beside.length > 0 && isDeck(bay / 2) && isDeck(bay - CLOSING_BAY) ? [{ bay, y }] : []
  })
}

/** From where a joist carries the deck to where it ceases to, which at a joint is the beam's centre line. */
function carriedReach({ part, joints: [first, last] }: JoistPlace): {
  readonly low: number
  readonly high: number
} {
  const { low, high } = extentOf(part)
  return { low: first?.at ?? low, high: last?.at ?? high }
}
