import { sectionOf } from '../data/index.ts'
import { type BeamSpec, edgeLengthList, type Fault, isRectangle, type Job } from '../job/index.ts'
import { printLength, type Ticks, ticks } from '../units/index.ts'
import { beamThickness, postFootprint } from './beam-on-post.ts'

/** Least bearing of a joist on wood, IRC 2021 R507.6.1: 1-1/2 in. */
const LEAST_BEARING = ticks(48)

/** What keeps a deck from being framed as stated; each fault stands at the field that causes it. */
export function layoutFaults(job: Job): readonly Fault[] {
  const rim = ticks(sectionOf(job.frame.joists.size).thickness * job.frame.rimPlies)
  const rectangle = isRectangle(job)
  const both = job.site.attachment === 'freestanding' || !rectangle
  const beams = both ? (['front', 'rear'] as const) : (['front'] as const)
  return [
    ...groundFaults(job),
    ...widthFaults(job),
    ...beams.flatMap((beam) => beamFaults(job, beam, job.frame.beams[beam], rim)),
    ...edgeLengthList(job.shape.setbacks).flatMap(({ edge, length }) =>
      setbackFaults('shape.setbacks', `edge ${edge}`, length, beamThickness(job.frame.beams.front), rim),
    ),
    ...(rectangle ? depthFaults(job) : []),
  ]
}

function groundFaults(job: Job): readonly Fault[] {
  const { ground } = job.site
  if (ground.kind === 'spots') {
    if (ground.spots.length > 0) return []
    return [
      {
        path: 'site.ground.spots',
        message: 'the ground is given by spot heights, but there is none',
        fix: 'give one spot at least, or state the ground as a plane',
      },
    ]
  }
  return (['along', 'away'] as const)
    .filter((direction) => ground[direction].over <= 0)
    .map((direction) => ({
      path: `site.ground.${direction}.over`,
      message: `a fall needs a length to fall over, and it is ${printLength(ground[direction].over)}`,
      fix: 'state a length over 0 in, e.g. the depth of the deck',
    }))
}

function widthFaults(job: Job): readonly Fault[] {
  const least = ticks(2 * sectionOf(job.frame.joists.size).thickness + job.frame.joists.spacing)
  if (job.size.width >= least) return []
  return [
    {
      path: 'size.width',
      message: `a frame ${printLength(job.size.width)} wide has no bay as wide as the joist spacing`,
      fix: `make it at least ${printLength(least)} wide, or the spacing less`,
    },
  ]
}

function beamFaults(job: Job, beam: 'front' | 'rear', spec: BeamSpec, rim: Ticks): readonly Fault[] {
  const path = `frame.beams.${beam}`
  const deckEdge = `the ${beam} rim’s outer face`
  const thickness = beamThickness(spec)
  return [
    ...(spec.set === 'flush' ? [] : setbackFaults(`${path}.setback`, deckEdge, spec.setback, thickness, rim)),
    ...postFaults(job, path, spec),
  ]
}

/** A beam so near the edge that it stands out of the frame, or that the joists hardly bear on it. */
function setbackFaults(
  path: string,
  deckEdge: string,
  setback: Ticks,
  thickness: Ticks,
  rim: Ticks,
): readonly Fault[] {
  const faults: Fault[] = []
  const standsOut = setback < thickness / 2
  const bearing = setback + thickness / 2 - rim
  if (standsOut || bearing < LEAST_BEARING) {
    const least = Math.ceil(Math.max(thickness / 2, rim + LEAST_BEARING - thickness / 2))
    faults.push({
      path,
      message: standsOut
        ? `a beam ${printLength(thickness)} thick, centred ${printLength(setback)} from ${deckEdge}, stands out of the frame`
        : 'the joists end at the rim and would bear less than 1-1/2 in on the beam (IRC 2021 R507.6.1)',
      fix: `centre it at least ${printLength(ticks(least))} from ${deckEdge}`,
    })
  }
  return faults
}

function postFaults(job: Job, path: string, spec: BeamSpec): readonly Fault[] {
  const faults: Fault[] = []
  if (!Number.isInteger(spec.posts) || spec.posts < 2) {
    return [
      {
        path: `${path}.posts`,
        message: `a beam needs two posts at least, and it has ${spec.posts}`,
        fix: 'state 2 or more',
      },
    ]
  }
  const post = postFootprint(job, spec)
  if (post === null) {
    return [
      {
        path: 'frame.postSize',
        message: `a beam of ${spec.plies} plies is ${printLength(beamThickness(spec))} thick and stands over a ${job.frame.postSize} post on both sides`,
        fix: 'choose a post as wide as the beam, e.g. 6x6, or fewer plies',
      },
    ]
  }
  if (spec.inset < post.along / 2) {
    faults.push({
      path: `${path}.inset`,
      message: `with an inset of ${printLength(spec.inset)} an end post stands out past the beam’s end`,
      fix: `state at least ${printLength(ticks(Math.ceil(post.along / 2)))}, half of the post’s width`,
    })
  }
  if (path.endsWith('rear') && spec.set === 'dropped' && spec.setback < post.across / 2) {
    faults.push({
      path: `${path}.setback`,
      message: `centred ${printLength(spec.setback)} from the rear rim’s outer face, the posts would stand in the house wall`,
      fix: `state at least ${printLength(ticks(Math.ceil(post.across / 2)))}, half of the post’s width`,
    })
  }
  if (!isRectangle(job)) return faults
  const between = job.size.width - 2 * spec.inset
  const footing = Math.max(job.ground.tube, job.ground.base)
  const least = Math.max(post.along, footing)
  if (between < least * (spec.posts - 1)) {
    faults.push({
      path: between < least ? `${path}.inset` : `${path}.posts`,
      message: `${spec.posts} posts on ${printLength(ticks(Math.max(0, between)))} between the end posts’ centres would run their footings into each other`,
      fix:
        between < least
          ? `inset them by at most ${printLength(ticks(Math.max(0, Math.floor((job.size.width - least) / 2))))}, or make the deck wider`
          : `take ${Math.floor(between / least) + 1} posts or fewer, or make the deck wider`,
    })
  }
  return faults
}

function depthFaults(job: Job): readonly Fault[] {
  const { depth } = job.size
  const front = asSet(job.frame.beams.front)
  const frontBack = depth - front.setback - beamThickness(front) / 2
  if (job.site.attachment === 'ledger') {
    const ledgerFace = sectionOf(job.frame.joists.size).thickness
    if (frontBack >= ledgerFace) return []
    const behind = depth - front.setback < 0
    return [
      {
        path: 'frame.beams.front.setback',
        message: `a beam ${printLength(front.setback)} behind the rim’s face of a deck ${printLength(depth)} deep would lie ${behind ? 'behind the wall' : 'in or behind the ledger'}`,
        fix: setbackFix(depth - ledgerFace - beamThickness(front) / 2),
      },
    ]
  }
  const rear = asSet(job.frame.beams.rear)
  const clear = frontBack - (rear.setback + beamThickness(rear) / 2)
  const footing = Math.max(job.ground.tube, job.ground.base)
  const apart = depth - front.setback - rear.setback
  if (clear >= 0 && apart >= footing) return []
  return [
    {
      path: 'frame.beams.rear.setback',
      message: `the two beams’ centre lines are ${apart < 0 ? 'crossed' : `${printLength(ticks(apart))} apart`}, so the beams or their footings meet`,
      fix: setbackFix(
        depth - front.setback - Math.max(footing, (beamThickness(front) + beamThickness(rear)) / 2),
      ),
    },
  ]
}

/** A flush beam's centre lies half of its thickness behind the edge. */
function asSet(spec: BeamSpec): BeamSpec {
  return spec.set === 'flush' ? { ...spec, setback: ticks(beamThickness(spec) / 2) } : spec
}

function setbackFix(most: number): string {
  return most > 0
    ? `set it back at most ${printLength(ticks(Math.floor(most)))}, or make the deck deeper`
    : 'make the deck deeper'
}
