import { DCA_BRACING, type LumberSize, sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { ceilTicks, inches, type Ticks, ticks } from '../units/index.ts'
import { beamTop, type Dimensions, productOf } from './dimensions.ts'
import type { Beam, Box, Connector, Member, PlanPoint, Post } from './types.ts'

/** Common practice, no source: a 2x4 is the least that guides show. */
const SIZE: LumberSize = '2x6'
/** Post left below a brace, so that it clears the base. */
const BELOW = inches(6)
/** A shorter brace holds nothing. */
const LEAST_LEG = inches(12)

/**
 * Knee braces of a freestanding deck, where the job states them: at the end posts of each beam, one along the beam and
 * one across it to the joists, at 45°, their legs 24 in along post and beam or what a short post leaves. AWC DCA 6 Figure
 * 10 has the ones along the beam; both ways is what a deck asks for that nothing else holds.
 */
export function frameBraces(
  job: Job,
  levelsOf: (beam: Beam) => Dimensions,
  beams: readonly Beam[],
  posts: readonly Post[],
): readonly Member[] {
  if (job.site.attachment !== 'freestanding' || job.frame.bracing !== 'knee braces') return []
  const centre = middleOf(posts)
  const braces = beams.flatMap((beam) => {
    const standing = beam.postIds.flatMap((id) => posts.find((post) => post.id === id) ?? [])
    const [first, last] = [standing[0], standing.at(-1)]
    if (first === undefined || last === undefined || first === last) return []
    const d = levelsOf(beam)
    return [...atPost(job, d, beam, first, last, centre), ...atPost(job, d, beam, last, first, centre)]
  })
  return braces.map((brace, i) => ({ ...brace, mark: `KB${i + 1}` }))
}

function atPost(
  job: Job,
  d: Dimensions,
  beam: Beam,
  post: Post,
  other: Post,
  centre: PlanPoint,
): readonly Member[] {
  const half = sectionOf(job.frame.postSize).depth / 2
  const apart = Math.hypot(other.x - post.x, other.y - post.y)
  const leg = ticks(
    Math.floor(Math.min(inches(DCA_BRACING.leg), post.length - BELOW, apart / 2 - half) / 32) * 32,
  )
  if (leg < LEAST_LEG) return []
  const along = { x: (other.x - post.x) / apart, y: (other.y - post.y) / apart }
  const square = { x: -along.y, y: along.x }
  const inward = square.x * (centre.x - post.x) + square.y * (centre.y - post.y) >= 0 ? 1 : -1
  const across = { x: square.x * inward, y: square.y * inward }
  const underBeam = beamTop(d, beam) - sectionOf(beam.size).depth
  return [
    brace(job, post, beam, 'along', along, half, leg, underBeam),
    brace(job, post, beam, 'across', across, half, leg, d.joistBottom),
  ]
}

/** @param top what the brace's upper end meets: the beam's or the joists' underside */
function brace(
  job: Job,
  post: Post,
  beam: Beam,
  way: 'along' | 'across',
  to: PlanPoint,
  half: number,
  leg: Ticks,
  top: number,
): Member {
  const thick = sectionOf(SIZE).thickness / 2
  const ends = [half, half + leg].map((far) => ({ x: post.x + to.x * far, y: post.y + to.y * far }))
  const side = { x: Math.abs(to.y) * thick, y: Math.abs(to.x) * thick }
  const xs = ends.map(({ x }) => x)
  const ys = ends.map(({ y }) => y)
  const box: Box = {
    x0: Math.min(...xs) - side.x,
    x1: Math.max(...xs) + side.x,
    y0: Math.min(...ys) - side.y,
    y1: Math.max(...ys) + side.y,
    z0: top - leg,
    z1: top,
  }
  return {
    id: `brace-${post.id}-${way}-${beam.key}`,
    mark: '',
    role: 'knee brace',
    product: productOf(job, SIZE),
    length: ceilTicks(leg * Math.SQRT2),
    ripTo: null,
    box,
    bearings: [post.id],
    cause: {
      fields: ['frame.bracing', 'site.attachment', 'frame.postSize', 'size.height'],
      ids: [post.id, beam.id],
      rule:
        way === 'along'
          ? 'At 45° from the end post to the beam, legs of 24 in or what the post leaves (AWC DCA 6 Figure 10, from memory)'
          : 'At 45° from the end post to a joist, or to a block between joists (common practice, no source)',
    },
  }
}

function middleOf(posts: readonly Post[]): PlanPoint {
  const mean = (of: (post: Post) => number) =>
    posts.reduce((sum, post) => sum + of(post), 0) / Math.max(1, posts.length)
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) }
}

/** Two bolts for each brace, one at each end. */
export function braceBolts(braces: readonly Member[]): readonly Connector[] {
  if (braces.length === 0) return []
  const at = braces.map(({ id }) => id)
  return [
    {
      kind: 'brace bolt',
      size: SIZE,
      count: 2 * braces.length,
      at,
      cause: {
        fields: ['frame.bracing'],
        ids: at,
        rule: 'One 1/2 in bolt at each end of a brace (common practice, no source)',
      },
    },
  ]
}
