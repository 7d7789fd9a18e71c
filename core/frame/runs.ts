import type { Job } from '../job/index.ts'
import { postFootprint } from '../layout/index.ts'
import { inches, printLength, type Ticks, ticks } from '../units/index.ts'
import { joistIds } from './joists.ts'
import type { Beam, FrameRun, Member, Post, RefusedPoint, RunPoint } from './types.ts'

/** Bearing that each end needs at a butt joint, IRC 2021 R507.6.1: 1-1/2 in. */
const LEAST_BEARING = inches(1.5)

/** A rim piece shorter than this splits at its nails: common practice, no source. */
const LEAST_RIM_PIECE = inches(6)

/** No piece of decking over fewer joists than this: common practice, no source. */
const DECKING_SUPPORTS = 3

/** Joist lines as a long member meets them. */
interface Line {
  readonly id: string
  readonly label: string
  readonly centre: Ticks
  readonly end: boolean
}

export function joistLines(centres: readonly Ticks[]): readonly Line[] {
  const ids = joistIds(centres.length)
  return centres.map((centre, i) => {
    const end = i === 0 || i === centres.length - 1
    return { id: ids[i] ?? '', label: end ? (i === 0 ? 'E1' : 'E2') : `J${i}`, centre, end }
  })
}

/** Plies of one beam: butt joints over inner posts only. */
export function beamRun(job: Job, beam: Beam, plies: readonly Member[], posts: readonly Post[]): FrameRun {
  const spec = job.frame.beams[beam.beam]
  const footprint = postFootprint(job, spec)
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  posts.forEach((post, i) => {
    const point = { at: ticks(post.x - beam.from), supportId: post.id, label: `post ${post.number}` }
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
  return {
    ...runOf(beam.id, `Beam ${beam.mark}`, 'beam ply', plies),
    points,
    refused,
    supports: posts.map((post) => ticks(post.x - beam.from)),
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
}

/** One rim: butt joints centred on the ends of inner joists; two plies never at one joist. */
export function rimRun(
  side: 'front' | 'rear',
  plies: readonly Member[],
  lines: readonly Line[],
  width: Ticks,
): FrameRun {
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  for (const line of lines) {
    const point = { at: line.centre, supportId: line.id, label: line.label }
    const shorter = ticks(Math.min(line.centre, width - line.centre))
    if (line.end) refused.push({ ...point, why: 'The rim ends at an end joist: there is nothing to join.' })
    else if (shorter < LEAST_RIM_PIECE) {
      refused.push({
        ...point,
        why: `It would leave a rim piece of ${printLength(shorter)}, which splits at its nails; 6 in is the least.`,
      })
    } else points.push(point)
  }
  return {
    ...runOf(`rim-${side}`, side === 'front' ? 'Front rim' : 'Rear rim', 'rim', plies),
    points,
    refused,
    supports: lines.map((line) => line.centre),
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
      at: ticks(Math.floor((left.centre + right.centre) / 2) - ledger.box.x0),
      supportId: left.id,
      label: `between ${left.label} and ${right.label}`,
    }
    const beside = Math.min(bay, bays - 1 - bay)
    if (beside >= 2) points.push(point)
    else {
      refused.push({
        ...point,
        why: `${beside === 0 ? 'No whole bay stands' : 'One whole bay only stands'} between it and the ledger’s end; two are needed.`,
      })
    }
  }
  return {
    ...runOf('ledger', 'Ledger', 'ledger', [ledger]),
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

/** All courses of decking: butt joints at inner joists' centres, no piece over fewer than three joists. */
export function deckingRun(courses: readonly Member[], lines: readonly Line[], overhang: Ticks): FrameRun {
  const points: RunPoint[] = []
  const refused: RefusedPoint[] = []
  lines.forEach((line, i) => {
    const point = { at: ticks(line.centre + overhang), supportId: line.id, label: line.label }
    const under = Math.min(i + 1, lines.length - i)
    if (line.end)
      refused.push({ ...point, why: 'The course ends past an end joist: there is nothing to join.' })
    else if (under < DECKING_SUPPORTS) {
      refused.push({ ...point, why: `It would leave a piece over ${under} joists; three are the least.` })
    } else points.push(point)
  })
  return {
    ...runOf('decking', 'Decking', 'decking', courses),
    points,
    refused,
    supports: lines.map((line) => ticks(line.centre + overhang)),
    minSupports: DECKING_SUPPORTS,
    minPiece: ticks(0),
    cap: Math.ceil(courses.length / 2),
    capPreferred: false,
    neighboursApart: true,
    cause: {
      fields: ['size.width', 'size.depth', 'decking.overhang', 'frame.joists.spacing'],
      ids: lines.map((line) => line.id),
      rule: 'Butt joints at inner joists’ centres, neighbours never at one joist, no piece over fewer than three joists (common practice, no source)',
    },
  }
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
  }
}
