import { sectionOf } from '../data/index.ts'
import { type BeamSpec, type Job, postList } from '../job/index.ts'
import { groundAt, postFootprint, type SupportLine } from '../layout/index.ts'
import { ceilTicks, type Ticks, ticks } from '../units/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import type { Member, Post } from './types.ts'

/**
 * Centres of a beam's posts from its left end. The end posts keep the stated inset; the others stand at equal
 * distances between, rounded to the nearest 1/16 in, a half up.
 */
export function postCentres(width: Ticks, spec: BeamSpec): readonly Ticks[] {
  const gaps = spec.posts - 1
  const between = width - 2 * spec.inset
  return Array.from({ length: spec.posts }, (_, i) => {
    if (i === 0) return spec.inset
    if (i === gaps) return ticks(width - spec.inset)
    // (inset + i × between ÷ gaps) to the nearest even tick, in whole numbers
    return ticks(2 * Math.floor((spec.inset * gaps + i * between + gaps) / (2 * gaps)))
  })
}

/**
 * Posts of one beam, from left to right.
 * Length = height − decking − joist − beam − (ground there + projection) − stand-off, rounded up to a tick; it may
 * come out at nothing or less, which the caller reports.
 */
export function placePosts(
  job: Job,
  d: Dimensions,
  line: SupportLine,
  beam: 'front' | 'rear',
  firstNumber: number,
): readonly (Omit<Post, 'length'> & { readonly exactLength: number })[] {
  const spec = job.frame.beams[beam]
  const beamDepth = sectionOf(spec.size).depth
  const moved = new Map(postList(job.ground.moved).map(({ post, length }) => [post, length]))
  return postCentres(job.size.width, spec).map((place, i) => {
    const x = ticks(place + (moved.get(firstNumber + i) ?? 0))
    const ground = groundAt(job, x, line.y)
    return {
      id: `post-${beam}-${i + 1}`,
      number: firstNumber + i,
      beam,
      x,
      y: line.y,
      ground,
      exactLength: d.joistBottom - beamDepth - (ground + job.ground.projection) - job.ground.standoff,
      cause: {
        fields: [
          'size.height',
          'size.width',
          `frame.beams.${beam}.posts`,
          `frame.beams.${beam}.inset`,
          `frame.beams.${beam}.setback`,
          `frame.beams.${beam}.size`,
          'frame.joists.size',
          'decking.size',
          ...groundFields(job),
          'ground.projection',
          'ground.standoff',
          ...(moved.has(firstNumber + i) ? ['ground.moved'] : []),
        ],
        ids: [`beam-${beam}`],
        rule:
          'Length = height − decking − joist − beam − (ground + projection) − stand-off, up to 1/32 in; ' +
          'inner posts at equal distances, to 1/16 in (common practice, no source)',
      },
    }
  })
}

export function withLength(placed: ReturnType<typeof placePosts>[number]): Post {
  const { exactLength, ...rest } = placed
  return { ...rest, length: ceilTicks(exactLength) }
}

function groundFields(job: Job): readonly string[] {
  return job.site.ground.kind === 'spots'
    ? ['site.ground.spots']
    : ['site.ground.along.fall', 'site.ground.away.fall']
}

/** The post as a stick of lumber, standing from its base to the beam. */
export function postMember(job: Job, d: Dimensions, post: Post): Member {
  const spec = job.frame.beams[post.beam]
  const footprint = postFootprint(job, spec)
  if (footprint === null)
    throw new Error(`${post.id} is narrower than its beam: the layout lets none through`)
  const top = d.joistBottom - sectionOf(spec.size).depth
  return {
    id: post.id,
    mark: `P${post.number}`,
    role: 'post',
    product: productOf(job, job.frame.postSize),
    length: post.length,
    ripTo: null,
    box: {
      x0: post.x - footprint.along / 2,
      x1: post.x + footprint.along / 2,
      y0: post.y - footprint.across / 2,
      y1: post.y + footprint.across / 2,
      z0: top - post.length,
      z1: top,
    },
    bearings: [`footing-${post.beam}-${post.id.split('-').at(-1)}`],
    cause: post.cause,
  }
}
