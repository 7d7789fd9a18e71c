import { sectionOf } from '../data/index.ts'
import { type BeamSpec, beamExtent, beamExtentField, isRectangle, type Job, postList } from '../job/index.ts'
import { groundAt, postFootprint, type SupportLine } from '../layout/index.ts'
import { ceilTicks, inches, type Ticks, ticks } from '../units/index.ts'
import { beamPlaceField, lineLength } from './beams.ts'
import { beamTop, type Dimensions, productOf } from './dimensions.ts'
import { boundsOf } from './footprint.ts'
import { shapeFields } from './joists.ts'
import type { Beam, Member, Post } from './types.ts'

/**
 * Centres of a beam's posts from its left end. The end posts keep the stated inset; the others stand at equal
 * distances between, rounded to the nearest 1/16 in, a half up.
 */
function postCentres(width: Ticks, spec: Pick<BeamSpec, 'posts' | 'inset'>): readonly Ticks[] {
  return centresBetween(spec.inset, ticks(width - spec.inset), spec.posts)
}

function centresBetween(first: Ticks, last: Ticks, posts: number): readonly Ticks[] {
  const gaps = posts - 1
  const between = last - first
  return Array.from({ length: posts }, (_, i) => {
    if (i === 0) return first
    if (i === gaps) return last
    // (first + i × between ÷ gaps) to the nearest even tick, in whole numbers
    return ticks(2 * Math.floor((first * gaps + i * between + gaps) / (2 * gaps)))
  })
}

/** A post not yet cut to a tick; it may come out at no length, which the caller reports. */
export type PlacedPost = Omit<Post, 'length'> & { readonly exactLength: number }

/** A post under a beam, and how far from the beam's left end. */
export interface PostOnBeam<P = Post> {
  readonly post: P
  readonly at: Ticks
}

/** By how much an end post gives way: common practice, no source. */
const STEP = inches(1)

/**
 * Where a beam's posts stand along it, moved ones not counted. The beam of a rectangle has as many as are stated;
 * another has them no farther apart than those would stand, two at least, and a short one a smaller inset. A mitred
 * end stands on a post at the joint. An end post gives way to the footing of another beam's post, and the other end post
 * then to it.
 * @param others posts of other beams, to which it gives way, where they stand to the tick
 */
export function postPlaces(
  job: Job,
  line: SupportLine,
  spec: BeamSpec,
  others: readonly { readonly x: number; readonly y: number }[],
): readonly Ticks[] {
  const length = lineLength(line)
  if (isRectangle(job)) return postCentres(length, spec)
  const footing = Math.max(job.ground.tube, job.ground.base)
  const inset = insetOf(job, spec, length, footing)
  const half = (postFootprint(job, spec)?.along ?? 0) / 2
  const isFree = (at: number) => {
    const place = placeAlong(line, at)
    return others.every(({ x, y }) => Math.hypot(place.x - x, place.y - y) >= footing)
  }
  const clear = (end: 0 | 1, wanted: number): number => {
    if ((line.cuts[end]?.meets ?? null) !== null) return 0
    const steps = 2 * Math.ceil(footing / STEP)
    const fits = (way: number) => way >= half && way < length / 3 && isFree(end === 0 ? way : length - way)
    // towards the beam's end first, where it overhangs less
    for (const towards of [-STEP, STEP])
      for (let step = 0; step < steps; step += 1)
        if (fits(wanted + step * towards)) return wanted + step * towards
    return wanted
  }
  const before = clear(0, inset)
  const after = clear(1, inset)
  // where one gave way inward the other stands nearer its own end: four times the overhang apart, IRC 2021 R507.5
  const facing = (other: number) => Math.min(inset, Math.max(2 * Math.ceil(half / 2), length - 5 * other))
  const first = ticks(clear(0, facing(after)))
  const last = ticks(length - clear(1, facing(before)))
  const stated = Math.max(1, beamExtent(job) - 2 * spec.inset)
  const gaps = Math.max(1, Math.ceil(((last - first) * (spec.posts - 1)) / stated))
  return centresBetween(
    first,
    last,
    Math.min(gaps, gapsBeside(Math.max(first, length - last), last - first)) + 1,
  )
}

/** Most spans beside which an end post that gave way lets the beam overhang: a quarter of one, IRC 2021 R507.5; one at least. */
function gapsBeside(overhang: number, between: number): number {
  return overhang === 0 ? Number.POSITIVE_INFINITY : Math.max(1, Math.floor(between / (4 * overhang)))
}

/**
 * The stated inset, or less: a quarter of the span beside it at most (IRC 2021 R507.5), and of a short beam what keeps
 * its footings apart, to 1/16 in.
 */
function insetOf(job: Job, spec: BeamSpec, length: number, footing: number): number {
  const stated = Math.max(1, beamExtent(job) - 2 * spec.inset)
  const gaps = Math.max(1, Math.ceil(((length - 2 * spec.inset) * (spec.posts - 1)) / stated))
  const usual = Math.min(spec.inset, 2 * Math.floor(length / (8 * gaps + 4)))
  if (length - 2 * usual >= footing) return usual
  const half = (postFootprint(job, spec)?.along ?? 0) / 2
  return Math.min(usual, Math.max(2 * Math.ceil(half / 2), 2 * Math.floor((length - footing) / 4)))
}

/** A post's place on the plan, to the tick: footings are told apart by it, wherever that is asked. */
export function placeAlong(
  { line: { from, to } }: Pick<SupportLine, 'line'>,
  at: number,
): { readonly x: Ticks; readonly y: Ticks } {
  const whole = Math.hypot(to.x - from.x, to.y - from.y)
  const way = { x: (to.x - from.x) / whole, y: (to.y - from.y) / whole }
  return { x: ticks(Math.round(from.x + way.x * at)), y: ticks(Math.round(from.y + way.y * at)) }
}

/**
 * Posts of one beam at their places, from left to right; at the mitre with a beam before it stands on that one's post.
 * Length = height − decking − joist − beam − (ground there + projection) − stand-off, rounded up to a tick; it may
 * come out at nothing or less, which the caller reports.
 */
export function placePosts(
  job: Job,
  d: Dimensions,
  line: SupportLine,
  beam: 'front' | 'rear',
  places: readonly Ticks[],
  firstNumber: number,
  joints: readonly [PlacedPost | null, PlacedPost | null],
): readonly PostOnBeam<PlacedPost>[] {
  const spec = job.frame.beams[beam]
  const beamDepth = sectionOf(spec.size).depth
  const moved = new Map(postList(job.ground.moved).map(({ post, length }) => [post, length]))
  const own = joints[0] === null ? 0 : 1
  return places.map((place, i) => {
    const joint = i === 0 ? joints[0] : i === places.length - 1 ? joints[1] : null
    if (joint !== null) return { post: joint, at: place }
    const number = firstNumber + i - own
    const at = ticks(place + (moved.get(number) ?? 0))
    const { x, y } = placeAlong(line, at)
    const ground = groundAt(job, x, y)
    return {
      at,
      post: {
        id: `post-${line.key}-${i + 1}`,
        number,
        beam,
        beamId: line.id,
        x,
        y,
        ground,
        exactLength: beamTop(d, line) - beamDepth - (ground + job.ground.projection) - job.ground.standoff,
        cause: {
          fields: [
            'size.height',
            beamExtentField(job.shape),
            `frame.beams.${beam}.posts`,
            `frame.beams.${beam}.inset`,
            beamPlaceField(line),
            `frame.beams.${beam}.size`,
            'frame.joists.size',
            'decking.size',
            ...groundFields(job),
            'ground.projection',
            'ground.standoff',
            ...(moved.has(number) ? ['ground.moved'] : []),
            ...shapeFields(job),
          ],
          ids: [line.id],
          rule:
            `Length = height − decking − ${line.flush ? 'flush beam' : 'joist − beam'} − (ground + projection) − stand-off, up to 1/32 in; ` +
            'inner posts at equal distances, to 1/16 in (common practice, no source)',
        },
      },
    }
  })
}

export function withLength(placed: PlacedPost): Post {
  const { exactLength, ...rest } = placed
  return { ...rest, length: ceilTicks(exactLength) }
}

function groundFields(job: Job): readonly string[] {
  return job.site.ground.kind === 'spots'
    ? ['site.ground.spots']
    : ['site.ground.along.fall', 'site.ground.away.fall']
}

/** The post as a stick of lumber, standing from its base to the beam, its sides along the beam and across it. */
export function postMember(job: Job, d: Dimensions, post: Post, beam: Pick<Beam, 'line' | 'flush'>): Member {
  const spec = job.frame.beams[post.beam]
  const footprint = postFootprint(job, spec)
  if (footprint === null)
    throw new Error(`${post.id} is narrower than its beam: the layout lets none through`)
  const top = beamTop(d, beam) - sectionOf(spec.size).depth
  const [from, to] = beam.line
  const whole = Math.hypot(to.x - from.x, to.y - from.y)
  const along = { x: (to.x - from.x) / whole, y: (to.y - from.y) / whole }
  const corner = (a: number, b: number) => ({
    x: post.x + (along.x * footprint.along * a - along.y * footprint.across * b) / 2,
    y: post.y + (along.y * footprint.along * a + along.x * footprint.across * b) / 2,
  })
  const plan = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]
  return {
    id: post.id,
    mark: `P${post.number}`,
    role: 'post',
    product: productOf(job, job.frame.postSize),
    length: post.length,
    ripTo: null,
    box: { ...boundsOf(plan), z0: top - post.length, z1: top },
    ...(along.x === 0 || along.y === 0 ? {} : { plan }),
    bearings: [post.id.replace('post', 'footing')],
    cause: post.cause,
  }
}
