import type { Job } from '../job/index.ts'
import { postFootprint } from '../layout/index.ts'
import { inches, printLength, type Ticks, ticks } from '../units/index.ts'
import type { EdgeBoard } from './edge-boards.ts'
import { leadOf } from './joint-place.ts'
import type { PlacedJoist } from './joists.ts'
import { plyRuns, runOfPly } from './ply-runs.ts'
import type { PostOnBeam } from './posts.ts'
import type { Beam, FrameRun, Member, PlanPoint, RefusedPoint, RunPoint } from './types.ts'

/** Bearing that each end needs at a butt joint, IRC 2021 R507.6.1: 1-1/2 in. */
const LEAST_BEARING = inches(1.5)

/** A rim piece shorter than this splits at its nails: common practice, no source. */
const LEAST_RIM_PIECE = inches(6)

/** Between two joists' middles where a ledger is jointed: a washer off either joist, 2 in off the joint (IRC 2021 Table R507.9.1.3(2)). */
const LEAST_JOINT_BAY = inches(2 * (1 + 2) + 1.5)

/** No piece of decking over fewer joists than this: common practice, no source. */
const DECKING_SUPPORTS = 3

/** A joist as a long member meets it. */
export interface Line {
  readonly id: string
  readonly label: string
  /** from the member's left end */
  readonly at: Ticks
  /** an end joist of the deck, at an end of the member */
  readonly end: boolean
  /** the member lies on it with a part of its width only, its middle past the joist's end */
  readonly grazes?: boolean
}

/** Joists along a member that lies from one place of the view to another, in order from its left end. */
export function linesAlong(joists: readonly PlacedJoist[], from: number, stretch = 1): readonly Line[] {
  return joists.map(({ member, place }, i) => ({
    id: member.id,
    label: member.mark,
    at: ticks(Math.round((place.centre - from) * stretch)),
    end: member.role === 'end joist' && (i === 0 || i === joists.length - 1),
  }))
}

/**
 * Places at every spacing along a board that lies on joists with its whole length: a joint has its bearing anywhere.
 * @param under what it lies on at a place, from its start
 */
export function linesEvery(
  spacing: Ticks,
  length: Ticks,
  under: (at: number) => Pick<Member, 'id' | 'mark'>,
): readonly Line[] {
  return Array.from({ length: Math.ceil(length / spacing) }, (_, i) => {
    const at = ticks(i * spacing)
    const { id, mark } = under(at)
    return { id, label: `${mark}, ${printLength(at)} along`, at, end: i === 0 }
  })
}

/** Plies of one beam: butt joints over inner posts only. Mitred plies are each a run of its own. */
export function beamRuns(
  job: Job,
  beam: Beam,
  plies: readonly Member[],
  posts: readonly PostOnBeam[],
): readonly FrameRun[] {
  const spec = job.frame.beams[beam.beam]
  const footprint = postFootprint(job, spec)
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  posts.forEach(({ post, at }, i) => {
    const point = { at, supportId: post.id, label: `post ${post.number}` }
    const end = i === 0 || i === posts.length - 1
    if (end)
      refused.push({
        ...point,
        why: 'An end post carries the beam’s end: the short piece would rest on one post alone.',
      })
    else if (footprint === null || footprint.along / 2 < LEAST_BEARING) {
      refused.push({
        ...point,
        why: 'The post leaves each end less than 1-1/2 in of bearing (IRC 2021 R507.6.1).',
      })
    } else points.push(point)
  })
  const several = spec.plies > 1
  const { stagger } = job.frame
  const run: FrameRun = {
    ...runOf(beam.id, `Beam ${beam.mark}`, 'beam ply', plies),
    points,
    refused,
    supports: posts.map(({ at }) => at),
    minSupports: 2,
    minPiece: ticks(0),
    cap: several && stagger !== 'none' ? spec.plies - 1 : null,
    capPreferred: several && stagger === 'preferred',
    neighboursApart: false,
    cause: {
      fields: ['size.width', `frame.beams.${beam.beam}.posts`, 'frame.stagger'],
      ids: [beam.id, ...beam.postIds],
      rule: 'Butt joints over inner posts only, 1-1/2 in of bearing for each end (IRC 2021 R507.6.1)',
    },
  }
  return plyRuns(run, plies, beam.line)
}

/**
 * One rim: butt joints centred on the ends of inner joists; two plies never at one joist. Plies of a slanting rim are of
 * several lengths, and each is a run of its own.
 * @param lines from the left end of the first ply
 */
export function rimRuns(board: EdgeBoard, lines: readonly Line[]): readonly FrameRun[] {
  const { plies } = board
  const [first] = plies
  if (first === undefined) throw new Error(`the rim ${board.id} has no ply`)
  const leads = plies.map((ply) => leadOf(ply, lineOf(first)))
  const start = leads[0] ?? 0
  const isAlike = plies.every(({ length }, i) => length === first.length && leads[i] === start)
  if (isAlike) return [rimRun(board, lines)]
  return plies.map((ply, i) => {
    const own = lines.map((line) => ({ ...line, at: ticks(line.at + (leads[i] ?? 0) - start) }))
    const run = rimRun({ ...board, plies: [ply] }, own)
    return runOfPly({ ...run, cap: 1 }, ply, {
      turn: i,
      of: plies.length,
      label: `${run.label}, ply ${ply.mark}`,
    })
  })
}

function lineOf({ line, box }: Member): readonly [PlanPoint, PlanPoint] {
  const y = (box.y0 + box.y1) / 2
  return (
    line ?? [
      { x: box.x0, y },
      { x: box.x1, y },
    ]
  )
}

function rimRun({ id, key, plies }: EdgeBoard, lines: readonly Line[]): FrameRun {
  const width = plies[0]?.length ?? ticks(0)
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  for (const line of lines) {
    const point = { at: line.at, supportId: line.id, label: line.label }
    const shorter = ticks(Math.min(line.at, width - line.at))
    if (line.end) refused.push({ ...point, why: 'The rim ends at an end joist: there is nothing to join.' })
    else if (shorter < LEAST_RIM_PIECE) {
      refused.push({
        ...point,
        why: `It would leave a rim piece of ${printLength(shorter)}, which splits at its nails; 6 in is the least.`,
      })
    } else points.push(point)
  }
  return {
    ...runOf(
      id,
      `${key.startsWith('front') ? 'Front' : 'Rear'} rim${key.replace(/^(front|rear)-?/, ' ').trimEnd()}`,
      'rim',
      plies,
    ),
    points,
    refused,
    supports: lines.map((line) => line.at),
    minSupports: 2,
    minPiece: LEAST_RIM_PIECE,
    cap: plies.length > 1 ? 1 : null,
    capPreferred: false,
    neighboursApart: false,
    cause: {
      fields: ['size.width', 'frame.rimPlies', 'frame.joists.spacing'],
      ids: lines.map((line) => line.id),
      rule: 'Butt joints centred on the ends of inner joists; two plies never at one joist (common practice, no source)',
    },
  }
}

/** The ledger: butt joints at mid-bay, two whole bays from its ends. */
export function ledgerRun(ledger: Member, lines: readonly Line[]): FrameRun {
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  const bays = lines.length - 1
  for (let bay = 0; bay < bays; bay++) {
    const left = lines[bay]
    const right = lines[bay + 1]
    if (left === undefined || right === undefined) continue
    const point = {
      at: ticks(Math.floor((left.at + right.at) / 2)),
      supportId: left.id,
      label: `between ${left.label} and ${right.label}`,
    }
    const beside = Math.min(bay, bays - 1 - bay)
    if (beside >= 2 && right.at - left.at < LEAST_JOINT_BAY)
      refused.push({
        ...point,
        why: 'The bay is too narrow for a pair of fasteners on either side of it, 2 in off the joint and clear of the joists.',
      })
    else if (beside >= 2) points.push(point)
    else {
      refused.push({
        ...point,
        why: `${beside === 0 ? 'No whole bay stands' : 'One whole bay only stands'} between it and the ledger’s end; two are needed.`,
      })
    }
  }
  return {
    ...runOf(ledger.id, ledger.id === 'ledger' ? 'Ledger' : `Ledger ${ledger.mark}`, 'ledger', [ledger]),
    points,
    refused,
    supports: [],
    minSupports: 0,
    minPiece: ticks(0),
    cap: null,
    capPreferred: false,
    neighboursApart: false,
    cause: {
      fields: ['size.width', 'frame.joists.spacing'],
      ids: lines.map((line) => line.id),
      rule: 'Butt joints at mid-bay, two whole bays from either end; each end gets its own pair of fasteners (common practice, no source)',
    },
  }
}

/** How courses of one run are jointed. */
interface CourseJoints {
  /** courses no longer than this are not jointed */
  readonly wholeUpTo: Ticks
  /** what a joint adds to both pieces */
  readonly lap: Ticks
  /**
   * where neighbours are of other runs: 0 or 1, so that of two that lie side by side one is jointed at every other joist
   * only and the other at those between; null where the run's own members are neighbours
   */
  readonly turn: 0 | 1 | null
  readonly label: string
}

/** Courses of decking that are alike: butt joints at inner joists' centres, no piece over fewer than three joists. */
export function deckingRun(
  id: string,
  courses: readonly Member[],
  lines: readonly Line[],
  { wholeUpTo, lap, turn, label }: CourseJoints,
): FrameRun {
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  const length = courses[0]?.length ?? 0
  lines.forEach((line, i) => {
    const point = { at: line.at, supportId: line.id, label: line.label }
    const under = Math.min(i + 1, lines.length - i)
    if (line.end)
      refused.push({ ...point, why: 'The course ends here or past here: there is nothing to join.' })
    else if (line.grazes === true)
      refused.push({ ...point, why: 'The joist ends here under a part of the board: a joint would hang.' })
    else if (length <= wholeUpTo) refused.push({ ...point, why: 'A course as short as this comes whole.' })
    else if (under < DECKING_SUPPORTS) {
      refused.push({ ...point, why: `It would leave a piece over ${under} joists; three are the least.` })
    } else if (turn !== null && numberOf(line) % 2 !== turn) {
      refused.push({
        ...point,
        why: 'The course beside it may be jointed here: neighbours never share a joist.',
      })
    } else points.push(point)
  })
  return {
    ...runOf(id, label, 'decking', courses),
    points,
    refused,
    ...(lap === 0 ? {} : { lap }),
    supports: lines.map((line) => line.at),
    minSupports: DECKING_SUPPORTS,
    minPiece: ticks(0),
    cap: turn === null ? Math.ceil(courses.length / 2) : null,
    capPreferred: false,
    neighboursApart: turn === null,
    cause: {
      fields: ['size.width', 'size.depth', 'decking.overhang', 'frame.joists.spacing'],
      ids: lines.map((line) => line.id),
      rule: 'Butt joints at inner joists’ centres, neighbours never at one joist, no piece over fewer than three joists (common practice, no source)',
    },
  }
}

/** The number in a joist's mark: J7 is 7, also where it goes on beyond a joint as J7b. */
function numberOf({ label }: Line): number {
  return Number(/\d+/.exec(label)?.[0] ?? 0)
}

function runOf(id: string, label: string, kind: FrameRun['kind'], members: readonly Member[]) {
  const first = members[0]
  if (first === undefined) throw new Error(`the run ${id} has no member`)
  return {
    id: `run-${id}`,
    label,
    kind,
    product: first.product,
    length: first.length,
    memberIds: members.map((member) => member.id),
    ...(first.ends === undefined ? {} : { ends: first.ends }),
  }
}
