import type { Fault, Job } from '../job/index.ts'
import { beamThickness, type Layout, type ViewEdge, type ZoneView, zoneView } from '../layout/index.ts'
import { fail, ok, type Result, type Ticks, ticks } from '../units/index.ts'
import { BeamMarks, beamOf, framePlies, lineLength } from './beams.ts'
import { type Blocking, frameBlocking } from './blocking.ts'
import { braceBolts, frameBraces } from './braces.ts'
import { frameBreakers } from './breakers.ts'
import { connectorsOf } from './connectors.ts'
import { borderOf, deckBlocks, fasciaOf } from './deck-surface.ts'
import { edgesBesideHigher } from './decked-outline.ts'
import { type Course, type Decked, fieldOf, frameDecking } from './decking.ts'
import { deckingRuns } from './decking-runs.ts'
import type { Dimensions } from './dimensions.ts'
import { BoardNames, type EdgeBoard, frameHips, frameLedgers, frameRims } from './edge-boards.ts'
import {
  footingFaults,
  jointFaults,
  movedPostFaults,
  postLengthFaults,
  supportFaults,
} from './field-faults.ts'
import { footingUnder } from './footings.ts'
import { frameHeaders } from './headers.ts'
import { hipConnectors, hipsOf } from './hips.ts'
import { crowdedSides, openingClashes } from './joist-clashes.ts'
import { joistGroups } from './joist-groups.ts'
import { joistPlaces, joistRoom, type ViewOpening } from './joist-places.ts'
import { jointedPlaces } from './joist-runs.ts'
import { frameJoists, JoistNames, middleBeamsOf, type PlacedJoist } from './joists.ts'
import { type LaidZone, type Laying, layingOf, linesUnder } from './laying.ts'
import { frameLevelSteps } from './level-steps.ts'
import { midSpanBlocks } from './mid-span-blocking.ts'
import { layoutNotes } from './notes.ts'
import { patternFaults } from './pattern-faults.ts'
import { type LevelDimensions, levelDimensions, type PlacedBeam, placeAllPosts } from './placed-beams.ts'
import { type PostOnBeam, postMember, withLength } from './posts.ts'
import { postInWoodFaults } from './posts-in-wood.ts'
import { beamRuns, ledgerRun, linesAlong, rimRuns } from './runs.ts'
import { diagonal } from './set-out.ts'
import type { Beam, DeckedZone, Frame, FrameRun, JoistGroup, Member, Post } from './types.ts'
import { underFaults, withUnderJoists } from './under-joists.ts'

/** Puts wood on a layout: every member, post, footing, connector and run, or the named faults that forbid it. */
export function frameDeck(job: Job, layout: Layout): Result<Frame, readonly Fault[]> {
  const laid = layout.zones.map((zone): LaidZone => {
    const view = zoneView(job, zone)
    const level = layout.levels.find(({ number }) => number === zone.level)
    const unbordered = level === undefined ? [] : edgesBesideHigher(job, level, layout.levels)
    return { zone, view, laying: layingOf(job, view, unbordered) }
  })
  const misplaced = patternFaults(job, layout, laid)
  if (misplaced.length > 0) return fail(misplaced)
  const levels = levelDimensions(job, layout)
  const zones = frameZones(job, levels, layout, laid)
  const placed = placeAllPosts(job, layout, levels)
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
    ...jointFaults(zones.flatMap((zone) => zone.joists)),
    ...crowdedSides(job, zones),
    ...zones.flatMap(({ level, joists }) => underFaults(joists, levels(level).joist.thickness)),
    ...layout.levels.flatMap(({ number, deckTop }) =>
      postLengthFaults(
        { path: number === 1 ? 'size.height' : 'shape.levels', height: deckTop },
        placed.filter(({ level }) => level === number).flatMap(({ own }) => own),
      ),
    ),
  ]
  if (faults.length > 0) return fail(faults)

  const carried = carriedBeams(job, zones, placed)
  const standing = carried.flatMap(({ beam, d, own }) => own.map((post) => postMember(job, d, post, beam)))
  const clashes = postInWoodFaults(job, standing, [
    ...carried.flatMap(({ plies }) => plies),
    ...zones.flatMap((zone) => [
      ...zone.joists.map(({ member }) => member),
      ...[...zone.boards, ...zone.hips].flatMap(({ plies }) => plies),
      ...zone.headers,
    ]),
  ])
  if (clashes.length > 0) return fail(clashes)
  const posts = carried.flatMap((one) => one.own)
  const beams = carried.map((one) => one.beam)
  const joists = zones.flatMap((zone) => zone.joists)
  const boards = zones.flatMap((zone) => zone.boards)
  const courses = [...zones.flatMap((zone) => zone.courses), ...borderOf(job, levels, layout, zones)]
  const fascia = fasciaOf(job, levels, layout, [
    ...boards.flatMap(({ plies }) => plies),
    ...joists.flatMap(({ member, place }) => (place.end ? [member] : [])),
  ])
  const overBeams = carried.flatMap((one) => one.blocking.blocks)
  const inSpans = midSpanBlocks(job, levels, zones, overBeams)
  const upright = [...overBeams, ...inSpans]
  const blocks = [...upright, ...deckBlocks(job, levels, zones, upright)]
  const headers = zones.flatMap((zone) => zone.headers)
  const footings = posts.map((post) => footingUnder(job, post))
  const braces = frameBraces(
    job,
    (beam) => carried.find((one) => one.beam === beam)?.d ?? levels(1),
    beams,
    posts,
  )
  const steps = frameLevelSteps(
    job,
    layout.levels,
    courses.map(({ member }) => member),
  )
  const hips = hipsOf(
    zones.flatMap((zone) => zone.hips),
    posts,
  )
  const { width, depth } = job.size
  return ok({
    members: [
      ...boards.filter(({ kind }) => kind === 'ledger').flatMap(({ plies }) => plies),
      ...joists.map(({ member }) => member),
      ...boards.filter(({ kind }) => kind === 'rim').flatMap(({ plies }) => plies),
      ...headers,
      ...zones.flatMap((zone) => zone.hips.flatMap(({ plies }) => plies)),
      ...carried.flatMap((one) => one.plies),
      ...blocks,
      ...standing,
      ...braces,
      ...courses.map(({ member }) => member),
      ...fascia.flatMap(({ boards: own }) => own.map(({ member }) => member)),
      ...steps.flatMap(({ members }) => members),
    ],
    beams,
    posts,
    footings,
    connectors: [
      ...connectorsOf(job, joists, beams, posts, headers),
      ...hipConnectors(job, hips),
      ...braceBolts(braces),
    ],
    runs: [
      ...zones.flatMap(edgeRuns),
      ...carried.flatMap((one) => beamRuns(job, one.beam, one.plies, one.posts)),
      ...deckingRuns(job, [...courses, ...fascia.flatMap(({ boards: own }) => own)]),
    ],
    decked: zones.map(({ decked }) => decked),
    freeEdges: fascia.flatMap(({ edges }) => edges),
    joistGroups: groupsOf(zones),
    steps: steps.map(({ step }) => step),
    hips,
    areaSquareFeet: layout.areaSquareFeet,
    joistCentres: centresOf(zones[0]?.joists ?? []),
    layoutNotes: layoutNotes(
      job,
      footings,
      posts,
      carried.map((one) => ({ beam: one.beam, leftOut: one.blocking.leftOut })),
      ticks(Math.max(0, ...zones.map(({ short }) => short))),
      ticks(Math.max(0, ...joists.map(({ member }) => member.length))),
    ),
    longDiagonal: diagonal(width, depth),
  })
}

/** Groups of all zones, numbered through the deck. */
function groupsOf(zones: readonly FramedZone[]): readonly JoistGroup[] {
  const groups: JoistGroup[] = []
  for (const { id, view, joists } of zones)
    groups.push(...joistGroups(id, view.polygon, joists, groups.length + 1))
  return groups
}

interface FramedZone {
  readonly id: string
  readonly view: ZoneView
  readonly joists: readonly PlacedJoist[]
  readonly boards: readonly EdgeBoard[]
  readonly hips: readonly EdgeBoard[]
  readonly openings: readonly ViewOpening[]
  readonly headers: readonly Member[]
  readonly level: number
  readonly laying: Laying
  /** breakers among them */
  readonly courses: readonly Course[]
  readonly decked: DeckedZone
  readonly short: Ticks
}

function frameZones(
  job: Job,
  levels: LevelDimensions,
  layout: Layout,
  laid: readonly LaidZone[],
): readonly FramedZone[] {
  const joistNames = new JoistNames()
  const boardNames = new BoardNames()
  let firstCourse = 1
  let firstBreaker = 1
  return laid.map(({ zone, view, laying }): FramedZone => {
    const d = levels(zone.level)
    const level = layout.levels.find(({ number }) => number === zone.level) ?? layout.levels[0]
    if (level === undefined) throw new Error('a deck has a level')
    const across = level.outline.map((corner) => view.turned(corner).x)
    const openings = zone.openings.map((opening): ViewOpening => {
      const [a, b] = [
        view.turned({ x: opening.x0, y: opening.y0 }),
        view.turned({ x: opening.x1, y: opening.y1 }),
      ]
      return { number: opening.number, x0: a.x, y0: a.y, x1: b.x, y1: b.y }
    })
    const extent = [Math.min(...across), Math.max(...across)] as const
    const room = joistRoom(view, d.joist.thickness)
    const whole = withUnderJoists(
      room,
      joistPlaces(job, view, extent, d.joist.thickness, openings),
      linesUnder(job, view, laying),
      openings,
      { spacing: job.frame.joists.spacing, gap: laying.gap },
    )
    const ledgers = frameLedgers(job, d, view, boardNames)
    // a rim names the joists that end at it, and they name it as what their length ends at
    const rimIds = frameRims(job, d, view, () => [], boardNames.copy())
    const hips = frameHips(job, d, view, underHip(zone))
    const ids = new Map([
      ...ledgers.map(({ edge, id }) => [edge.index, id] as const),
      ...rimIds.map(({ edge, plies }) => [edge.index, plies[0]?.id ?? ''] as const),
      ...hips.map(({ edge, id }) => [edge.index, id] as const),
      ...zone.supports
        .filter(({ flush, edge }) => flush && edge >= 0)
        .map(({ edge, id }) => [edge, id] as const),
    ])
    const zoned = { view, supports: zone.supports }
    const places = jointedPlaces(job, room, whole, (place) => middleBeamsOf(job, zoned, place, ids))
    const joists = frameJoists(job, d, zoned, places, ids, joistNames)
    const joistsAt = (edge: ViewEdge) => meeting(joists, edge).map(({ member }) => member.id)
    const rims = frameRims(job, d, view, joistsAt, boardNames)
    const decked: Decked = { field: fieldOf(job, view, laying, level, layout.levels), openings, joists }
    const decking = frameDecking(job, d, view, laying, decked, firstCourse)
    firstCourse += decking.field.rows
    const breakers = frameBreakers(job, d, view, laying, decked, firstBreaker)
    firstBreaker += breakers.length
    return {
      id: zone.id,
      view,
      joists,
      boards: [...ledgers, ...rims],
      hips,
      openings,
      headers: frameHeaders(job, d, view, openings, joists),
      level: zone.level,
      laying,
      courses: [...decking.courses, ...breakers],
      decked: decking.field,
      short: decking.short,
    }
  })
}

/** What carries a part's ply of a hip: the beam that is mitred under it, and the ledger at the inside corner. */
function underHip({ supports }: LaidZone['zone']): readonly string[] {
  const mitred = supports.filter(({ cuts }) => cuts.some((cut) => cut !== null && cut.meets !== null))
  return [...supports.filter(({ kind }) => kind === 'ledger'), ...mitred].map(({ id }) => id)
}

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

function asNumbered({ line, posts }: PlacedBeam) {
  return { length: lineLength(line), posts: posts.map(({ post, at }) => ({ number: post.number, at })) }
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
  return placed.map(({ line, level, d, spec, posts, own }) => {
    const stood = posts.flatMap(({ post, at }) => {
      const whole = cut.get(post)
      return whole === undefined ? [] : [{ post: whole, at }]
    })
    const zone = zones.find(
      (one) =>
        one.level === level && one.joists.some(({ supports }) => supports.some(({ id }) => id === line.id)),
    )
    const view = zone?.view ?? zones[0]?.view
    if (view === undefined) throw new Error('a deck has a zone')
    const mark = marks.next(line.key)
    const ids = stood.map(({ post }) => post.id)
    const plies = framePlies(job, d, view, line, spec, mark, ids)
    const beam = beamOf(job, line, spec, mark, plies, stood)
    return {
      d,
      beam,
      posts: stood,
      own: own.flatMap((post) => cut.get(post) ?? []),
      plies,
      blocking: frameBlocking(
        job,
        d,
        view,
        line,
        beam,
        zone?.joists ?? [],
        (zone?.boards ?? []).flatMap((board) => board.plies),
      ),
    }
  })
}

function edgeRuns({ view, joists, boards }: FramedZone): readonly FrameRun[] {
  return boards.flatMap((one) => {
    const [first] = one.plies
    if (first === undefined) throw new Error(`${one.id} has no ply`)
    const seen = view.polygon[view.edges.indexOf(one.edge)]
    const next = view.polygon[(view.edges.indexOf(one.edge) + 1) % view.polygon.length]
    const span = Math.abs((next?.x ?? 0) - (seen?.x ?? 0))
    const stretch = Math.hypot(span, (next?.y ?? 0) - (seen?.y ?? 0)) / span
    const left = leftOf(view, first)
    const lines = linesAlong(meeting(joists, one.edge), left, stretch)
    return one.kind === 'ledger' ? [ledgerRun(first, lines)] : rimRuns(one, lines)
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

function centresOf(joists: readonly PlacedJoist[]): readonly Ticks[] {
  // beyond a joint joists stand on lines of their own: see the marking sheet
  const first = joists.filter(({ place }) => place.run === 1)
  return [...new Set(first.map(({ place }) => ticks(place.centre)))]
}
