import type { Fault, Job } from '../job/index.ts'
import { beamThickness, type Layout, type ZoneView, zoneView } from '../layout/index.ts'
import { fail, ok, type Result, type Ticks, ticks } from '../units/index.ts'
import { BeamMarks, beamOf, framePlies, lineLength } from './beams.ts'
import { type Blocking, frameBlocking } from './blocking.ts'
import { braceBolts, frameBraces } from './braces.ts'
import { connectorsOf } from './connectors.ts'
import { borderOf, deckBlocks, fasciaOf } from './deck-surface.ts'
import { edgesBesideHigher } from './decked-outline.ts'
import { deckingRuns } from './decking-runs.ts'
import type { Dimensions } from './dimensions.ts'
import {
  footingFaults,
  jointFaults,
  movedPostFaults,
  postLengthFaults,
  supportFaults,
} from './field-faults.ts'
import { footingUnder } from './footings.ts'
import { type FramedZone, frameZones, meeting } from './frame-zones.ts'
import { hipConnectors, hipsOf } from './hips.ts'
import { crowdedSides, openingClashes } from './joist-clashes.ts'
import { joistGroups } from './joist-groups.ts'
import type { PlacedJoist } from './joists.ts'
import { type LaidZone, layingOf } from './laying.ts'
import { frameLevelSteps } from './level-steps.ts'
import { midSpanBlocks } from './mid-span-blocking.ts'
import { narrowStretches } from './narrow-stretches.ts'
import { layoutNotes } from './notes.ts'
import { patternFaults } from './pattern-faults.ts'
import { levelDimensions, type PlacedBeam, placeAllPosts } from './placed-beams.ts'
import { type PostOnBeam, postMember, withLength } from './posts.ts'
import { postInWoodFaults } from './posts-in-wood.ts'
import { beamRuns, ledgerRun, linesAlong, rimRuns } from './runs.ts'
import { diagonal } from './set-out.ts'
import type { Beam, Frame, FrameRun, JoistGroup, Member, Post } from './types.ts'
import { underFaults } from './under-joists.ts'

/**
 * Puts wood on a layout: every member, post, footing, connector and run, or the named faults that forbid it.
 * @param partsOf frames its parts, or tells them from those of a deck whose parts are the same
 */
export function frameDeck(
  job: Job,
  layout: Layout,
  partsOf: typeof frameZones = frameZones,
): Result<Frame, readonly Fault[]> {
  const laid = layout.zones.map((zone): LaidZone => {
    const view = zoneView(job, zone)
    const level = layout.levels.find(({ number }) => number === zone.level)
    const unbordered = level === undefined ? [] : edgesBesideHigher(job, level, layout.levels)
    return { zone, view, laying: layingOf(job, view, unbordered) }
  })
  const misplaced = patternFaults(job, layout, laid)
  if (misplaced.length > 0) return fail(misplaced)
  const levels = levelDimensions(job, layout)
  const zones = partsOf(job, levels, layout, laid)
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
    ...courses.map(({ member }) => member),
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
      narrowStretches(zones.flatMap((zone) => zone.courses.map(({ member }) => member))),
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
