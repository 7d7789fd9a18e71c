import { sectionOf } from '../data/index.ts'
import { convexOverlap } from '../geometry/index.ts'
import { type Fault, isRectangle, type Job, postList } from '../job/index.ts'
import type { SupportLine } from '../layout/index.ts'
import { printLength, type Ticks, ticks } from '../units/index.ts'
import { beamShape } from './beams.ts'
import { footingDepth } from './footings.ts'
import type { Post } from './types.ts'

/**
 * Posts that come out at no length: a platform is too low for what stands under it.
 * @param platform the field that states its height, and that
 */
export function postLengthFaults(
  { path, height }: { readonly path: string; readonly height: Ticks },
  posts: readonly (Omit<Post, 'length'> & { readonly exactLength: number })[],
): readonly Fault[] {
  const shortest = posts.reduce((least, post) => Math.min(least, post.exactLength), Number.POSITIVE_INFINITY)
  if (shortest > 0) return []
  const post = posts.find((one) => one.exactLength === shortest)
  const missing = ticks(Math.floor(-shortest) + 1)
  return [
    {
      path,
      message: `with the decking at ${printLength(height)}, post ${post?.number ?? 1} would have no length, for the beam would lie in or under its base`,
      fix: `raise the deck by at least ${printLength(missing)}, or take shallower joists, a shallower beam or less concrete above the ground`,
    },
  ]
}

/** Posts moved off their beam, past each other, or so near that their footings meet. */
export function movedPostFaults(
  job: Job,
  beams: readonly {
    readonly length: number
    readonly posts: readonly { readonly number: number; readonly at: number }[]
  }[],
): readonly Fault[] {
  const moved = new Set(postList(job.ground.moved).map(({ post }) => post))
  if (moved.size === 0) return []
  const numbers = beams.flatMap(({ posts }) => posts.map(({ number }) => number))
  const shared = numbers.filter((number, i) => moved.has(number) && numbers.indexOf(number) !== i)
  if (shared.length > 0)
    return shared.map((number) => ({
      path: 'ground.moved',
      message: `two beams meet over post ${number}, which cannot move along one of them`,
      fix: 'shift its base, or dig again',
    }))
  const apart = Math.max(job.ground.tube, job.ground.base)
  const half = sectionOf(job.frame.postSize).depth / 2
  return beams.flatMap(({ length, posts }) =>
    posts.flatMap((post, i): readonly Fault[] => {
      const before = posts[i - 1]
      // posts that stay are judged elsewhere; one under the mitre of two beams stands at the end of both
      const moves = moved.has(post.number)
      const off = moves && (post.at < half || post.at > length - half)
      const near = before !== undefined && (moves || moved.has(before.number)) && post.at - before.at < apart
      if (!off && !near) return []
      return [
        {
          path: 'ground.moved',
          message: off
            ? `post ${post.number} would stand past the end of its beam`
            : `posts ${before?.number} and ${post.number} would be less than ${printLength(ticks(apart))} apart, and their footings would meet`,
          fix: 'move it less, or dig again',
        },
      ]
    }),
  )
}

/** Beams too short for two posts, joists that rest on one support or none. */
export function supportFaults(
  job: Job,
  beams: readonly {
    readonly line: SupportLine
    readonly thickness: number
    readonly length: Ticks
    readonly posts: readonly { readonly at: Ticks }[]
    /** posts that no beam before it stands on */
    readonly own: readonly { readonly x: Ticks; readonly y: Ticks; readonly number: number }[]
  }[],
  joists: readonly {
    readonly centre: number
    readonly from: number
    readonly to: number
    readonly supports: number
    readonly joists: 'away' | 'along'
  }[],
): readonly Fault[] {
  const footing = Math.max(job.ground.tube, job.ground.base)
  const faults: Fault[] = []
  const crowded = beams.find(({ posts }) =>
    posts.some((post, i) => i > 0 && post.at - (posts[i - 1]?.at ?? post.at) < footing),
  )
  if (crowded !== undefined) {
    faults.push({
      path: 'shape.outline',
      message: `a beam ${printLength(crowded.length)} long would have its footings run into each other`,
      fix: 'make that part of the deck wider, or the footings smaller',
    })
  }
  const where = job.shape.zones.trim() === '' ? 'shape.outline' : 'shape.zones'
  if (beams.some((beam, i) => beams.slice(i + 1).some((other) => collide(beam, other)))) {
    faults.push({
      path: where,
      message: 'two beams would lie in one place',
      fix: 'make that part of the deck deeper, set the beams back less, or leave the part out',
    })
  }
  if (beams.length === 0) {
    faults.push({
      path: 'shape.outline',
      message: 'nothing but the house would carry this deck, for no edge of it has room for a beam',
      fix: 'make it deeper, or name fewer walls',
    })
  }
  if (!isRectangle(job)) {
    const posts = beams.flatMap(({ own }) => own)
    const near = posts.flatMap((post, i) =>
      posts
        .slice(i + 1)
        .filter(({ x, y }) => Math.hypot(x - post.x, y - post.y) < footing)
        .map((other) => [post.number, other.number] as const),
    )[0]
    if (near !== undefined && crowded === undefined) {
      faults.push({
        path: where,
        message: `the footings of posts ${near[0]} and ${near[1]} would run into each other`,
        fix: 'make that part of the deck larger, inset the posts otherwise, or make the footings smaller',
      })
    }
  }
  const bare = joists.find(({ supports }) => supports < 2)
  if (bare !== undefined) {
    const place = printLength(ticks(Math.round(bare.centre)))
    const reach = printLength(ticks(Math.round(bare.to - bare.from)))
    const where = bare.joists === 'away' ? `${place} from the left end` : `${place} from the wall`
    faults.push({
      path: 'shape.outline',
      message: `the joist ${where}, ${reach} long, would rest on ${bare.supports === 0 ? 'nothing' : 'one support alone'}`,
      fix: 'make the deck deeper there, name a wall that carries it, or set the beam back less',
    })
  }
  return faults
}

/** Least bearing of a joist on wood, IRC 2021 R507.6.1: 1-1/2 in. */
const LEAST_BEARING = ticks(48)

/** Joists butted over a beam so thin that their ends hardly bear on it. */
export function jointFaults(
  joists: readonly {
    readonly supports: readonly { readonly seat: 'whole' | 'half' | 'hung'; readonly half: number }[]
    readonly place: { readonly joints: readonly (object | null)[] }
  }[],
): readonly Fault[] {
  const short = joists.some(
    ({ supports, place }) =>
      place.joints.some((joint) => joint !== null) &&
      supports.some(({ seat, half }) => seat === 'half' && half < LEAST_BEARING),
  )
  if (!short) return []
  return [
    {
      path: 'frame.beams.front.plies',
      message:
        'joists, or the end joists at least, are butted over a middle beam of one ply, and each end would bear only half of its thickness; 1-1/2 in are needed (IRC 2021 R507.6.1)',
      fix: 'give the beam two plies, or have the joists whole if their stock can be had',
    },
  ]
}

/** Whether two beams that do not meet at a mitre lie over each other by more than rounding leaves. */
function collide(
  a: { readonly line: SupportLine; readonly thickness: number },
  b: { readonly line: SupportLine; readonly thickness: number },
): boolean {
  const meets = (one: SupportLine, other: SupportLine) => one.cuts.some((cut) => cut?.meets === other.id)
  if (meets(a.line, b.line) || meets(b.line, a.line)) return false
  const shape = ({ line, thickness }: typeof a) => beamShape(line, -thickness / 2, thickness / 2)
  return convexOverlap(shape(a), shape(b), 0.5)
}

/** Footings that cannot be cast as stated. */
export function footingFaults(job: Job): readonly Fault[] {
  const { tube, base, baseThickness, projection } = job.ground
  const faults: Fault[] = []
  if (base > 0 && base < tube) {
    faults.push({
      path: 'ground.base',
      message: `a base ${printLength(base)} across is narrower than its tube of ${printLength(tube)}`,
      fix: 'make it as wide as the tube at least, or 0 for none',
    })
  }
  if (base > 0 && baseThickness <= 0) {
    faults.push({
      path: 'ground.baseThickness',
      message: 'a base needs a thickness',
      fix: 'state it, 6 in at least (IRC 2021 Table R507.3.1), or set the base to 0',
    })
  }
  if (base > 0 && baseThickness >= footingDepth(job)) {
    faults.push({
      path: 'ground.baseThickness',
      message: `a base ${printLength(baseThickness)} thick does not lie under the ground in a hole ${printLength(footingDepth(job))} deep`,
      fix: 'make it thinner than the hole is deep',
    })
  }
  if (base === 0 && footingDepth(job) + projection <= 0) {
    faults.push({
      path: 'ground.projection',
      message: 'the tube comes out at no length',
      fix: 'state how far the concrete stands out of the ground, 0 or more',
    })
  }
  return faults
}
