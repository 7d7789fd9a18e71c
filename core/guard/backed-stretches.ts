import type { Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { type Spot, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { blocksFor, guardBlocks } from './guard-blocks.ts'
import { guardPosts } from './guard-members.ts'
import { type GuardLoop, layStretches, type Refusal } from './stretches.ts'
import type { Backing, GuardPost, GuardStretch } from './types.ts'

/** How far a post keeps off a place behind which too few blocks fit, in turn: common practice, no source. */
const ASIDE = [1, 2, 3, 4, 6, 8, 10, 12].map(inches)

/** So near each other two posts may leave no room for a block between them. */
const NEIGHBOURS = inches(24)

/** Stretches of one loop of edges with their posts and the blocks behind them. */
interface Backed {
  readonly stretches: readonly GuardStretch[]
  readonly posts: readonly Member[]
  readonly blocks: readonly Member[]
  readonly backing: readonly Backing[]
  readonly replaced: readonly string[]
}

/**
 * Stretches of guard with their posts and the blocks behind them. A post behind which too few blocks fit, or one beside
 * it, stands further along its edge where that brings them.
 */
export function backedStretches(job: Job, loops: readonly GuardLoop[]): readonly Backed[] {
  const first = backLoops(job, loops, [])
  const refused = loops.flatMap((loop, i) => {
    const laid = first[i]
    return laid !== undefined && barePosts(laid).length > 0 ? refusalsFor(job, loop, laid) : []
  })
  return refused.length === 0 ? first : backLoops(job, loops, refused)
}

function backLoops(job: Job, loops: readonly GuardLoop[], refused: readonly Refusal[]): readonly Backed[] {
  const stretches = layStretches(job, loops, refused)
  return loops.map((loop) => {
    const own = stretches.filter(({ edge }) => loop.edges.includes(edge))
    return backed(job, loop, own)
  })
}

/** Places at which no post of a loop is to stand, so that the fewest are left with too few blocks. */
function refusalsFor(job: Job, loop: GuardLoop, first: Backed): readonly Refusal[] {
  const asLaid = (refused: readonly Refusal[], laid: Backed) => ({
    refused,
    stretches: laid.stretches,
    bare: barePosts(laid),
  })
  const bareWith = (refused: readonly Refusal[]) =>
    asLaid(refused, backed(job, loop, layStretches(job, [loop], refused)))
  let best = asLaid([], first)
  for (const reach of ASIDE) {
    if (best.bare.length === 0) return best.refused
    const { refused, stretches, bare } = best
    const off = (places: readonly Place[]) => [
      ...refused,
      ...places.map(({ edge, at }) => ({ edge, from: at - reach, to: at + reach })),
    ]
    const beside = besideOf(stretches, bare)
    for (const places of [bare, beside, [...bare, ...beside]]) {
      const other = bareWith(off(places))
      if (other.bare.length < best.bare.length) best = other
    }
  }
  return best.refused
}

function backed(job: Job, loop: GuardLoop, stretches: readonly GuardStretch[]): Backed {
  const posts = stretches.flatMap((stretch) => guardPosts(job, stretch))
  const { members, ...rest } = guardBlocks(job, stretches, loop, posts)
  return { stretches, posts, blocks: members, ...rest }
}

/** Where a post stands: along an edge, and on the plan. */
interface Place {
  readonly edge: string
  readonly at: number
  readonly spot: Spot
}

function placesOf(
  stretches: readonly GuardStretch[],
  isMeant: (post: GuardPost) => boolean,
): readonly Place[] {
  return stretches.flatMap(({ edge, posts }) =>
    posts.filter(isMeant).map(({ at }) => ({ edge: edge.id, at, spot: spotAt(edge, at, 0) })),
  )
}

function barePosts({ stretches, backing }: Backed): readonly Place[] {
  return placesOf(stretches, (post) => !isBacked(post, backing))
}

/** Posts on other edges that stand near some. */
function besideOf(stretches: readonly GuardStretch[], places: readonly Place[]): readonly Place[] {
  return placesOf(stretches, () => true).filter((one) =>
    places.some(
      ({ edge, spot }) =>
        edge !== one.edge && Math.hypot(spot.x - one.spot.x, spot.y - one.spot.y) < NEIGHBOURS,
    ),
  )
}

/** Whether as many blocks hold a post as reach two joists. */
export function isBacked(post: GuardPost, backing: readonly Backing[]): boolean {
  const own = backing.find((one) => one.post === post.id)?.blocks ?? []
  return own.length >= blocksFor(post)
}
