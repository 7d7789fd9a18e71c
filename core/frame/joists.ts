import { edgeAt, heightAt, type PlanePoint } from '../geometry/index.ts'
import { type FieldPath, isRectangle, type Job } from '../job/index.ts'
import { beamAt, beamThickness, type SupportLine, type ViewEdge, type ZoneView } from '../layout/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { type Placed, placedBoard } from './footprint.ts'
import { hungAtCorner } from './hung-at-corner.ts'
import { extentOf, firstOf, type JoistJoint, type JoistPlace } from './joist-places.ts'
import type { MiddleBeam } from './joist-runs.ts'
import { oneCut } from './one-cut.ts'
import type { Cause, JoistSupport, Member } from './types.ts'

/** A joist with its place in the view and what carries it. */
export interface PlacedJoist {
  readonly member: Member
  readonly place: JoistPlace
  readonly supports: readonly JoistSupport[]
  /** where its load begins and ends along the joist */
  readonly from: number
  readonly to: number
}

export interface Zoned {
  readonly view: ZoneView
  readonly supports: readonly SupportLine[]
}

/** Numbers joists and end joists through the whole deck. */
export class JoistNames {
  #inner = 0
  #trimmers = 0
  #left = false
  #right = false
  #further = 2

  inner() {
    this.#inner += 1
    return { id: `joist-${this.#inner}`, mark: `J${this.#inner}`, role: 'joist' as const }
  }

  trimmer() {
    this.#trimmers += 1
    return { id: `trimmer-${this.#trimmers}`, mark: `T${this.#trimmers}`, role: 'joist' as const }
  }

  /** The deck's first end joist and the last one of the same zone say their side, the others are numbered. */
  end(first: boolean, last: boolean) {
    const role = 'end joist' as const
    if (first && !this.#left) {
      this.#left = true
      return { id: 'end-joist-left', mark: 'E1', role }
    }
    if (last && !this.#right) {
      this.#right = true
      return { id: 'end-joist-right', mark: 'E2', role }
    }
    this.#further += 1
    return { id: `end-joist-${this.#further}`, mark: `E${this.#further}`, role }
  }
}

/** Joists and end joists of a zone, from left to right. */
export function frameJoists(
  job: Job,
  d: Dimensions,
  zone: Zoned,
  places: readonly JoistPlace[],
  boards: ReadonlyMap<number, string>,
  names: JoistNames,
): readonly PlacedJoist[] {
  const named = namesOf(places, names)
  return places.map((place) => {
    const supports = supportsOf(job, zone, place, boards)
    const name = named.get(place)
    if (name === undefined) throw new Error('a joist has a name')
    return {
      place,
      supports,
      ...loaded(zone.view, place),
      member: {
        ...name,
        product: productOf(job, d.joist.size),
        ripTo: null,
        ...boardOf(zone.view, place, d),
        bearings: supports.map(({ id }) => id),
        cause: causeOf(job, place, boards),
      },
    }
  })
}

type JoistName = ReturnType<JoistNames['inner'] | JoistNames['end']>

/** Names from left to right; what goes on over a joint is called as what it goes on from, with a letter. */
function namesOf(places: readonly JoistPlace[], names: JoistNames): ReadonlyMap<JoistPlace, JoistName> {
  const ends = places.filter(({ end, continues }) => end && continues === null)
  const named = new Map<JoistPlace, JoistName>()
  const firsts = places.filter(({ continues }) => continues === null)
  // a joist that closes a bay beyond a lap is numbered after those that start where joists start
  for (const place of [...firsts.filter(({ run }) => run === 1), ...firsts.filter(({ run }) => run > 1)])
    named.set(place, nameOf(place, names, ends))
  for (const place of places) {
    const first = firstOf(place)
    const name = named.get(first)
    if (name === undefined || first === place) continue
    const letter = String.fromCharCode(96 + place.run - first.run + 1)
    named.set(place, { ...name, id: `${name.id}-${letter}`, mark: `${name.mark}${letter}` })
  }
  return named
}

function nameOf(place: JoistPlace, names: JoistNames, ends: readonly JoistPlace[]): JoistName {
  if (place.trimmer) return names.trimmer()
  return place.end ? names.end(place === ends[0], place === ends.at(-1)) : names.inner()
}

function boardOf(view: ZoneView, place: JoistPlace, d: Dimensions): Placed {
  const { centre } = place
  const half = d.joist.thickness / 2
  const { left, right } = oneCut(view, place, d.joist.thickness)
  const corner = (x: number, y: number): PlanePoint => ({ x, y })
  const levels = { z0: d.joistBottom, z1: d.joistTop }
  return placedBoard(
    view,
    [
      corner(centre - half, left.low),
      corner(centre - half, left.high),
      corner(centre + half, right.high),
      corner(centre + half, right.low),
    ],
    levels,
  )
}

/** Beams that a joist crosses between two other supports, level and square to it, and past both faces: over those it may be jointed. */
export function middleBeamsOf(
  job: Job,
  zone: Zoned,
  place: JoistPlace,
  boards: ReadonlyMap<number, string>,
): readonly MiddleBeam[] {
  const dropped = supportsOf(job, zone, place, boards)
    .slice(1, -1)
    .filter(({ kind, skew, at, half }) => kind === 'beam' && skew === 0 && reachesPast(place, at, half))
    .map(({ id, at, half }) => ({ id, at, half, flush: false }))
  return [...dropped, ...flushAcross(job, zone, place)].sort((a, b) => a.at - b.at)
}

/** Whether both long edges of a joist go on past a beam's faces, so that each piece of it would bear on its half. */
function reachesPast({ part: { left, right } }: JoistPlace, at: number, half: number): boolean {
  return Math.max(left.low, right.low) <= at - half && Math.min(left.high, right.high) >= at + half
}

/** Flush beams that lie across a joist's way. */
function flushAcross(
  job: Job,
  { view, supports }: Zoned,
  { centre, part }: JoistPlace,
): readonly MiddleBeam[] {
  const { low, high } = extentOf(part)
  const half = beamThickness(job.frame.beams.front) / 2
  return supports
    .filter(({ flush, edge }) => flush && edge < 0)
    .flatMap(({ id, line }) => {
      const [from, to] = [view.turned(line.from), view.turned(line.to)]
      const across = centre > Math.min(from.x, to.x) && centre < Math.max(from.x, to.x)
      return across && from.y + half > low && from.y - half < high
        ? [{ id, at: from.y, half, flush: true }]
        : []
    })
}

/** Ledgers at its ends and every beam that it crosses, from where it starts. */
function supportsOf(
  job: Job,
  { view, supports }: Zoned,
  place: JoistPlace,
  boards: ReadonlyMap<number, string>,
): readonly JoistSupport[] {
  const { low, high } = extentOf(place.part)
  const found = supports.flatMap((line): readonly JoistSupport[] => {
    const seen = { from: view.turned(line.line.from), to: view.turned(line.line.to) }
    if (seen.from.x === seen.to.x) return []
    const at = heightAt(seen, place.centre)
    const slope = (seen.to.y - seen.from.y) / (seen.to.x - seen.from.x)
    const skew = Math.round((Math.atan(Math.abs(slope)) * 18_000) / Math.PI)
    if (line.kind === 'ledger') {
      const meets = [place.startsAt, place.endsAt].some((edge) => edge?.index === line.edge)
      return meets ? [{ id: line.id, kind: 'ledger', at, half: 0, skew, seat: 'hung' }] : []
    }
    const within =
      place.centre >= Math.min(seen.from.x, seen.to.x) &&
      place.centre <= Math.max(seen.from.x, seen.to.x) &&
      at >= low - 1 &&
      at <= high + 1
    if (line.flush) return hungFrom(line, place, at, job)
    if (!within || line.beam === null) return []
    const half = (beamThickness(job.frame.beams[line.beam]) / 2) * Math.hypot(1, slope)
    const joint = place.joints.find((one) => one?.beamId === line.id)
    const seat = joint?.kind === 'butted' || endsAgainst(place, at) ? 'half' : 'whole'
    return [{ id: line.id, kind: 'beam', at, half, skew, seat }]
  })
  const all = [...found, ...headersOf(view, place, boards)]
    .sort((a, b) => a.at - b.at)
    .filter((one, i, sorted) => i === 0 || one.kind !== 'beam' || one.at - (sorted[i - 1]?.at ?? 0) > 1)
  return hungAtCorner(place, all, boards)
}

/** A flush beam at which a joist starts or ends: at its edge, or in the middle, where the joist is cut. */
function hungFrom(line: SupportLine, place: JoistPlace, at: number, { frame }: Job): readonly JoistSupport[] {
  const half = beamThickness(frame.beams[line.beam ?? 'front']) / 2
  const hung = (face: number): readonly JoistSupport[] => [
    { id: line.id, kind: 'beam', at: face, half: 0, skew: 0, seat: 'hung' },
  ]
  if (place.startsAt?.index === line.edge || place.joints[0]?.beamId === line.id) return hung(at + half)
  if (place.endsAt?.index === line.edge || place.joints[1]?.beamId === line.id) return hung(at - half)
  return []
}

/** Whether a joist ends at a place against one of the zone beside, the beam under both. */
function endsAgainst({ part, startsAt, endsAt }: JoistPlace, at: number): boolean {
  const { low, high } = extentOf(part)
  return [
    { edge: startsAt, end: low },
    { edge: endsAt, end: high },
  ].some(
    ({ edge, end }) =>
      (edge?.edge.seam === 'shared beam' || edge?.edge.seam === 'other zone’s beam') &&
      Math.abs(at - end) <= 1,
  )
}

/** A header beside an opening, or a rim from which a joist hangs, where it starts or ends at a steep edge; a joist that hangs at one end may at both. */
function headersOf(
  view: ZoneView,
  place: JoistPlace,
  boards: ReadonlyMap<number, string>,
): readonly JoistSupport[] {
  const ends = [
    { edge: place.startsAt, at: Math.max(place.part.left.low, place.part.right.low) },
    { edge: place.endsAt, at: Math.min(place.part.left.high, place.part.right.high) },
  ]
  return ends.flatMap(({ edge, at }, end): readonly JoistSupport[] => {
    const header = place.headers[end === 0 ? 0 : 1]
    if (header !== null) return [{ id: `${header}-1`, kind: 'header', at, half: 0, skew: 0, seat: 'hung' }]
    const id = edge === null ? undefined : boards.get(edge.index)
    if (edge === null || !edge.steep || id === undefined) return []
    const { from, to } = edgeAt(view.polygon, view.edges.indexOf(edge))
    const lean = Math.atan2(Math.abs(to.y - from.y), Math.abs(to.x - from.x))
    const skew = Math.round((lean * 18_000) / Math.PI)
    return [{ id, kind: 'header', at, half: 0, skew, seat: 'hung' }]
  })
}

/** Joists carry load from a ledger's face to the outer face of a rim; of one jointed over a beam, to its centre line. */
function loaded(view: ZoneView, place: JoistPlace): { readonly from: number; readonly to: number } {
  const { low, high } = extentOf(place.part)
  const outer = (edge: ViewEdge | null, inner: number) => {
    if (edge === null) return inner
    const line = edgeAt(view.polygon, view.edges.indexOf(edge))
    const face = heightAt(line, place.centre)
    if (edge.steep) return inner
    return edge.board === 'ledger' || edge.board === 'flush beam'
      ? face + (edge.role === 'head' ? edge.width : -edge.width)
      : face
  }
  const [first, last] = place.joints.map((joint) => (joint?.kind === 'hung' ? null : joint))
  return { from: first?.at ?? outer(place.startsAt, low), to: last?.at ?? outer(place.endsAt, high) }
}

function causeOf(job: Job, place: JoistPlace, boards: ReadonlyMap<number, string>): Cause {
  const cause = place.end ? endCause(job, place, boards) : innerCause(job, place, boards)
  return place.under === undefined ? cause : underCause(place.under, cause)
}

/** The chain that *why* walks for a joist which only the decking asks for. */
function underCause(under: NonNullable<JoistPlace['under']>, { ids }: Cause): Cause {
  return {
    fields: [`decking.${under === 'border' ? 'border' : 'breakers'}`, 'decking.gap', 'size.depth'],
    ids,
    rule: `It stands under the gap at which boards of the decking end at a ${under} (common practice, no source)`,
  }
}

function innerCause(job: Job, place: JoistPlace, boards: ReadonlyMap<number, string>): Cause {
  if (isJointed(place)) return jointedCause(job, place, boards)
  return {
    fields: [
      'size.depth',
      'size.width',
      'frame.joists.spacing',
      'frame.joists.layoutFrom',
      ...boardFields(place),
      ...shapeFields(job),
    ],
    ids: boardsAt(place, boards, [false, false]),
    rule: `Length = depth − ${boardWords(place)}; one at every spacing from the end joist’s outer face (common practice, no source)`,
  }
}

function endCause(job: Job, place: JoistPlace, boards: ReadonlyMap<number, string>): Cause {
  if (isJointed(place)) return jointedCause(job, place, boards)
  const laps = place.laps[0] || place.laps[1]
  return {
    fields: ['size.depth', ...boardFields(place), 'site.attachment', ...shapeFields(job)],
    ids: boardsAt(place, boards, place.laps),
    rule: laps
      ? `Length = depth − ${boardWords(place, true)}: it laps the ledger’s end (common practice, no source)`
      : `Length = depth − ${boardWords(place)} (common practice, no source)`,
  }
}

function isJointed({ joints }: JoistPlace): boolean {
  return joints.some((joint) => joint !== null)
}

/** A joist that goes on over a middle beam, or that closes the bay which a lap leaves too wide. */
function jointedCause(job: Job, place: JoistPlace, boards: ReadonlyMap<number, string>): Cause {
  const ids = place.joints.flatMap((joint) => (joint === null ? [] : [joint.beamId]))
  const is = (kind: JoistJoint['kind']) => place.joints.some((joint) => joint?.kind === kind)
  const closes = place.continues === null && place.run > 1
  return {
    fields: [
      'frame.joists.overMiddle',
      'frame.joists.longest',
      'shape.middleBeams',
      'size.depth',
      'frame.joists.spacing',
      'frame.joists.layoutFrom',
      ...shapeFields(job),
    ],
    ids: [...ids, ...boardsAt(place, boards, place.laps)],
    rule: closes
      ? 'One more, 3 in from the line beside: beyond a lap the joists stand one thickness further on, and that bay would be wider than the spacing (common practice, no source)'
      : is('lapped')
        ? 'Lapped over the beam by 3 in or its thickness, half of it past the centre (IRC 2021 R502.6.1): every second run stands one thickness further on'
        : is('butted')
          ? 'Butted over the middle of the beam, a plate on each side: its line stays straight (IRC 2021 R502.6.1, a splice as strong as a nailed lap)'
          : 'Hung from the flush beam, whose half thickness its length loses (IRC 2021 R507.6.1)',
  }
}

/** Fields of the boards at which a joist ends: plies of a rim, or of a flush beam in its place. */
function boardFields({ startsAt, endsAt }: JoistPlace): readonly FieldPath[] {
  const hung = [startsAt, endsAt].filter((edge) => edge?.board === 'flush beam')
  if (hung.length === 0) return ['frame.rimPlies']
  return hung.flatMap((edge) => {
    if (edge?.edge.seam === 'higher level’s beam') return ['shape.levelBeams', 'shape.levels']
    const side = edge === null ? 'front' : beamAt(edge)
    const set = edge?.edge.kind === 'seam' ? 'shape.seams' : `frame.beams.${side}.set`
    return [set, `frame.beams.${side}.plies`]
  })
}

/** What is taken off a joist's length at its two ends. */
function boardWords({ startsAt, endsAt, headers }: JoistPlace, lapsLedger = false): string {
  const boards: string[] = [startsAt, endsAt].flatMap((edge) =>
    edge === null || edge.board === 'none' || (lapsLedger && edge.board === 'ledger') ? [] : [edge.board],
  )
  boards.push(...headers.flatMap((header) => (header === null ? [] : ['header'])))
  const [first, second] = boards
  if (first === undefined) return 'nothing, for it ends at the zone beside'
  if (second === undefined) return first
  return first === second ? `two ${first}s` : boards.sort().join(' − ')
}

/** Ids of the boards at which it ends; those that it laps are not the cause of its length. */
function boardsAt(
  { startsAt, endsAt }: JoistPlace,
  boards: ReadonlyMap<number, string>,
  laps: readonly [boolean, boolean],
): readonly string[] {
  return [laps[0] ? null : startsAt, laps[1] ? null : endsAt].flatMap((edge) => {
    const id = edge === null ? undefined : boards.get(edge.index)
    return id === undefined ? [] : [id]
  })
}

/** Fields that shape a deck other than a rectangle. */
export function shapeFields(job: Job): readonly FieldPath[] {
  return isRectangle(job) ? [] : ['shape.outline', 'shape.zones']
}
