import { type Fault, isRectangle, type Job } from '../job/index.ts'
import {
  beamThickness,
  type Layout,
  type SupportLine,
  type ViewEdge,
  type ZoneView,
  zoneView,
} from '../layout/index.ts'
import { fail, feet, inches, ok, printLength, type Result, type Ticks, ticks } from '../units/index.ts'
import { BeamMarks, beamOf, framePlies, lineLength } from './beams.ts'
import { type Blocking, frameBlocking } from './blocking.ts'
import { braceBolts, frameBraces } from './braces.ts'
import { connectorsOf } from './connectors.ts'
import { type Course, frameDecking } from './decking.ts'
import { type Dimensions, dimensionsOf } from './dimensions.ts'
import { BoardNames, type EdgeBoard, frameLedgers, frameRims } from './edge-boards.ts'
import { footingFaults, movedPostFaults, postLengthFaults, supportFaults } from './field-faults.ts'
import { footingUnder } from './footings.ts'
import { frameHeaders } from './headers.ts'
import { joistGroups } from './joist-groups.ts'
import { joistPlaces, type ViewOpening } from './joist-places.ts'
import { frameJoists, JoistNames, type PlacedJoist } from './joists.ts'
import { layoutNotes } from './notes.ts'
import { type PlacedPost, type PostOnBeam, placePosts, postMember, withLength } from './posts.ts'
import { beamRun, deckingRun, ledgerRun, linesAlong, rimRun } from './runs.ts'
import { diagonal } from './set-out.ts'
import type { Beam, Frame, FrameRun, JoistGroup, Member, Post } from './types.ts'

/** Puts wood on a layout: every member, post, footing, connector and run, or the named faults that forbid it. */
export function frameDeck(job: Job, layout: Layout): Result<Frame, readonly Fault[]> {
  const levels = levelDimensions(job, layout)
  const zones = frameZones(job, levels, layout)
  const placed = placeAllPosts(job, levels, layout)
  const faults = [
    ...footingFaults(job),
    ...movedPostFaults(job, placed.map(asNumbered)),
    ...supportFaults(
      job,
      placed.map((one) => ({
        ...asNumbered(one),
        own: one.own,
        line: one.line,
        thickness: beamThickness(job.frame.beams[one.spec]),
      })),
      zones.flatMap(asStretches),
    ),
    ...openingClashes(zones),
    ...layout.levels.flatMap(({ number, deckTop }) =>
      postLengthFaults(
        { path: number === 1 ? 'size.height' : 'shape.levels', height: deckTop },
        placed.filter(({ level }) => level === number).flatMap(({ own }) => own),
      ),
    ),
  ]
  if (faults.length > 0) return fail(faults)

  const carried = carriedBeams(job, zones, placed)
  const posts = carried.flatMap((one) => one.own)
  const beams = carried.map((one) => one.beam)
  const joists = zones.flatMap((zone) => zone.joists)
  const boards = zones.flatMap((zone) => zone.boards)
  const courses = zones.flatMap((zone) => zone.courses)
  const headers = zones.flatMap((zone) => zone.headers)
  const footings = posts.map((post) => footingUnder(job, post))
  const braces = frameBraces(
    job,
    (beam) => carried.find((one) => one.beam === beam)?.d ?? levels(1),
    beams,
    posts,
  )
  const { width, depth } = job.size
  return ok({
    members: [
      ...boards.filter(({ kind }) => kind === 'ledger').flatMap(({ plies }) => plies),
      ...joists.map(({ member }) => member),
      ...boards.filter(({ kind }) => kind === 'rim').flatMap(({ plies }) => plies),
      ...headers,
      ...carried.flatMap((one) => one.plies),
      ...carried.flatMap((one) => one.blocking.blocks),
      ...carried.flatMap(({ beam, d, own }) => own.map((post) => postMember(job, d, post, beam))),
      ...braces,
      ...courses.map(({ member }) => member),
    ],
    beams,
    posts,
    footings,
    connectors: [...connectorsOf(job, joists, beams, posts, headers), ...braceBolts(braces)],
    runs: [
      ...zones.flatMap(edgeRuns),
      ...carried.map((one) => beamRun(job, one.beam, one.plies, one.posts)),
      ...deckingRuns(job, courses),
    ],
    joistGroups: groupsOf(zones),
    areaSquareFeet: layout.areaSquareFeet,
    joistCentres: centresOf(zones[0]?.joists ?? []),
    layoutNotes: layoutNotes(
      job,
      footings,
      posts,
      carried.map((one) => ({ beam: one.beam, leftOut: one.blocking.leftOut })),
      ticks(Math.max(0, ...zones.map(({ short }) => short))),
    ),
    longDiagonal: diagonal(width, depth),
  })
}

/** Groups of all zones, numbered through the deck. */
function groupsOf(zones: readonly FramedZone[]): readonly JoistGroup[] {
  const groups: JoistGroup[] = []
  for (const { id, joists } of zones) groups.push(...joistGroups(id, joists, groups.length + 1))
  return groups
}

/** Levels of height by the number of their platform. */
type LevelDimensions = (level: number) => Dimensions

function levelDimensions(job: Job, { levels }: Layout): LevelDimensions {
  const found = new Map(
    levels.map(({ number, deckTop }) => [
      number,
      dimensionsOf({ ...job, size: { ...job.size, height: deckTop } }),
    ]),
  )
  return (level) => found.get(level) ?? dimensionsOf(job)
}

interface FramedZone {
  readonly id: string
  readonly view: ZoneView
  readonly joists: readonly PlacedJoist[]
  readonly boards: readonly EdgeBoard[]
  readonly openings: readonly ViewOpening[]
  readonly headers: readonly Member[]
  readonly courses: readonly Course[]
  readonly short: Ticks
}

function frameZones(job: Job, levels: LevelDimensions, layout: Layout): readonly FramedZone[] {
  const joistNames = new JoistNames()
  const boardNames = new BoardNames()
  let firstCourse = 1
  return layout.zones.map((zone): FramedZone => {
    const d = levels(zone.level)
    const view = zoneView(job, zone)
    const platform = layout.levels.find(({ number }) => number === zone.level)?.outline ?? layout.outline
    const across = platform.map((corner) => view.turned(corner).x)
    const openings = zone.openings.map((opening): ViewOpening => {
      const [a, b] = [
        view.turned({ x: opening.x0, y: opening.y0 }),
        view.turned({ x: opening.x1, y: opening.y1 }),
      ]
      return { number: opening.number, x0: a.x, y0: a.y, x1: b.x, y1: b.y }
    })
    const extent = [Math.min(...across), Math.max(...across)] as const
    const places = joistPlaces(job, view, extent, d.joist.thickness, openings)
    const ledgers = frameLedgers(job, d, view, boardNames)
    // a rim names the joists that end at it, and they name it as what their length ends at
    const rimIds = frameRims(job, d, view, () => [], boardNames.copy())
    const ids = new Map([
      ...ledgers.map(({ edge, id }) => [edge.index, id] as const),
      ...rimIds.map(({ edge, plies }) => [edge.index, plies[0]?.id ?? ''] as const),
    ])
    const joists = frameJoists(job, d, { view, supports: zone.supports }, places, ids, joistNames)
    const joistsAt = (edge: ViewEdge) => meeting(joists, edge).map(({ member }) => member.id)
    const rims = frameRims(job, d, view, joistsAt, boardNames)
    const decking = frameDecking(job, d, view, joists, openings, firstCourse)
    firstCourse += decking.rows
    return {
      id: zone.id,
      view,
      joists,
      boards: [...ledgers, ...rims],
      openings,
      headers: frameHeaders(job, d, view, openings, joists),
      courses: decking.courses,
      short: decking.short,
    }
  })
}

/** Openings whose trimmers or headers would lie where an end joist goes on from a step of the outline. */
function openingClashes(zones: readonly FramedZone[]): readonly Fault[] {
  return zones.flatMap(({ openings, joists }) =>
    openings.flatMap(({ number, x0, x1, y0, y1 }): readonly Fault[] => {
      const beside = joists.some(
        ({ place, from, to }) =>
          place.end && from < y1 && to > y0 && place.centre > x0 - CLASH && place.centre < x1 + CLASH,
      )
      if (!beside) return []
      return [
        {
          path: 'shape.openings',
          message: `opening ${number} lies across or beside an end joist that goes on from a step of the outline`,
          fix: `leave ${printLength(CLASH)} between it and the line of the step`,
        },
      ]
    }),
  )
}

/** Two trimmers and the room beside them. */
const CLASH = inches(6)

/** Joists that start or end at an edge. */
function meeting(joists: readonly PlacedJoist[], edge: ViewEdge): readonly PlacedJoist[] {
  return joists.filter(
    ({ place }) => place.startsAt?.index === edge.index || place.endsAt?.index === edge.index,
  )
}

function asStretches({ view, joists }: FramedZone) {
  return joists.map(({ place, from, to, supports }) => ({
    centre: place.centre,
    from,
    to,
    supports: supports.length,
    joists: view.zone.joists,
  }))
}

interface PlacedBeam {
  readonly line: SupportLine
  readonly level: number
  readonly d: Dimensions
  readonly spec: 'front' | 'rear'
  readonly posts: readonly PostOnBeam<PlacedPost>[]
  /** posts that no beam before it stands on */
  readonly own: readonly PlacedPost[]
}

function asNumbered({ line, posts }: PlacedBeam) {
  return { length: lineLength(line), posts: posts.map(({ post, at }) => ({ number: post.number, at })) }
}

/** Each beam once, numbered through the deck. */
function placeAllPosts(job: Job, levels: LevelDimensions, layout: Layout): readonly PlacedBeam[] {
  const placed: PlacedBeam[] = []
  let nextNumber = 1
  const lines = layout.zones.flatMap(({ level, supports }) => supports.map((line) => ({ line, level })))
  for (const { line, level } of lines) {
    if (line.beam === null || placed.some((one) => one.line.id === line.id)) continue
    const meets = line.cuts[0]?.meets ?? null
    const before = placed.find((one) => one.line.id === meets)
    const joint = before?.posts.at(-1)?.post ?? null
    const others = placed.flatMap((one) => one.own)
    const d = levels(level)
    const posts = placePosts(job, d, line, line.beam, nextNumber, joint, others)
    const own = posts.map(({ post }) => post).filter((post) => post !== joint)
    nextNumber += own.length
    placed.push({ line, level, d, spec: line.beam, posts, own })
  }
  return placed
}

interface CarriedBeam {
  readonly beam: Beam
  readonly d: Dimensions
  readonly posts: readonly PostOnBeam[]
  readonly own: readonly Post[]
  readonly plies: readonly Member[]
  readonly blocking: Blocking
}

function carriedBeams(
  job: Job,
  zones: readonly FramedZone[],
  placed: readonly PlacedBeam[],
): readonly CarriedBeam[] {
  const marks = new BeamMarks()
  const cut = new Map(placed.flatMap(({ own }) => own).map((post) => [post, withLength(post)]))
  return placed.map(({ line, d, spec, posts, own }) => {
    const stood = posts.flatMap(({ post, at }) => {
      const whole = cut.get(post)
      return whole === undefined ? [] : [{ post: whole, at }]
    })
    const zone = zones.find(({ joists }) =>
      joists.some(({ supports }) => supports.some(({ id }) => id === line.id)),
    )
    const view = zone?.view ?? zones[0]?.view
    if (view === undefined) throw new Error('a deck has a zone')
    const mark = marks.next(line.key)
    const ids = stood.map(({ post }) => post.id)
    const plies = framePlies(job, d, view, line, spec, mark, ids)
    return {
      d,
      beam: beamOf(job, line, spec, mark, plies, stood),
      posts: stood,
      own: own.flatMap((post) => cut.get(post) ?? []),
      plies,
      blocking: frameBlocking(job, d, view, line, zone?.joists ?? []),
    }
  })
}

function edgeRuns({ view, joists, boards }: FramedZone): readonly FrameRun[] {
  return boards.map((one) => {
    const [first] = one.plies
    if (first === undefined) throw new Error(`${one.id} has no ply`)
    const seen = view.polygon[view.edges.indexOf(one.edge)]
    const next = view.polygon[(view.edges.indexOf(one.edge) + 1) % view.polygon.length]
    const span = Math.abs((next?.x ?? 0) - (seen?.x ?? 0))
    const stretch = Math.hypot(span, (next?.y ?? 0) - (seen?.y ?? 0)) / span
    const left = leftOf(view, first)
    const lines = linesAlong(meeting(joists, one.edge), left, stretch)
    return one.kind === 'ledger' ? ledgerRun(first, lines) : rimRun(one, lines)
  })
}

/** Left end of a member in the view. */
function leftOf(view: ZoneView, { box, plan }: Member): number {
  const corners = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y1 },
  ]
  return Math.min(...corners.map((corner) => view.turned(corner).x))
}

/** A part of a course this short comes whole: common practice, no source. */
const WHOLE_COURSE = feet(12)

/** Whether every course of a deck is of one length. */
function isPlain(job: Job): boolean {
  return isRectangle(job) && job.shape.openings.trim() === ''
}

/** Courses that are alike, of one length over the same joists, may be jointed as one run. */
function deckingRuns(job: Job, courses: readonly Course[]): readonly FrameRun[] {
  const alike = new Map<string, Course[]>()
  for (const course of courses) {
    const { member, from } = course
    const key = [from.toFixed(1), member.length, ...(member.ends ?? []), ...member.bearings].join(' ')
    alike.set(key, [...(alike.get(key) ?? []), course])
  }
  return [...alike.values()].map((own, i) => {
    const [first] = own
    const lines = linesAlong(first?.joists ?? [], first?.from ?? 0)
    return deckingRun(
      i === 0 ? 'decking' : `decking-${i + 1}`,
      own.map(({ member }) => member),
      lines,
      // beside a step or an opening, boards shorter than the usual lengths are laid whole
      isPlain(job) ? ticks(0) : WHOLE_COURSE,
    )
  })
}

function centresOf(joists: readonly PlacedJoist[]): readonly Ticks[] {
  return [...new Set(joists.map(({ place }) => ticks(place.centre)))]
}
