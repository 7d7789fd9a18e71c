import { sectionOf } from '../data/index.ts'
import { boundsOf, cornersOf, fromAbove, type Member } from '../frame/index.ts'
import { convexOverlap, type Polygon } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type DeckEdge, type Spot, spotAt } from '../stairs/index.ts'
import { feet, inches, ticks } from '../units/index.ts'
import { type BlockPlace, blockThrough, type Hold, holdsBlocks } from './block-between.ts'
import {
  type BlockSpot,
  crossingOf,
  HALF_BLOCK,
  halfPost,
  isOneBay,
  isSame,
  type Line,
  lies,
  lines,
  lineThrough,
  nextBays,
} from './block-lines.ts'
import { FRAME_WOOD } from './frame-wood.ts'
import { guardStick } from './guard-stick.ts'
import type { GuardLoop } from './stretches.ts'
import type { Backing, GuardPost, GuardStretch } from './types.ts'
import { underBorderAt } from './under-border.ts'

/** A block beside a cut border is moved so far past its post where something stands in its way: common practice, no source. */
const MOVED = inches(8)

/** Blocks of one loop of edges, and which of them and of the frame's hold each post. */
interface Backed {
  readonly members: readonly Member[]
  readonly backing: readonly Backing[]
  /** ids of blocks under a border in whose place one of these stands */
  readonly replaced: readonly string[]
}

/**
 * Blocks behind the posts of one loop of edges, in the bays where they stand: one beside a post that stands beside a
 * joist, two bays of them elsewhere, in one line, and on both sides of a post that cuts what carries a border. The one
 * behind a post stands against it, as long as its bay is clear there and in nothing else; one that lies against it
 * already, another post's or one over a beam, serves it too. Where too few fit the check of guard posts names the post.
 * @param loop what stands along and behind the edges, and where no block may
 * @param posts the posts themselves
 */
export function guardBlocks(
  job: Job,
  stretches: readonly GuardStretch[],
  { members, taken }: Pick<GuardLoop, 'members' | 'taken'>,
  posts: readonly Member[],
): Backed {
  const top = Math.max(0, ...stretches.map(({ edge }) => edge.top))
  // what is level with the joists: a dropped beam lies under them
  const bottom = top - inches(2)
  const level = members.filter(({ role, box }) => FRAME_WOOD.has(role) && box.z1 > bottom && box.z1 <= top)
  const standing = [
    ...[...level, ...posts].map(
      (member): Standing => ({ id: member.id, shape: fromAbove(member), box: member.box }),
    ),
    ...taken
      .filter(({ joist }) => joist.box.z1 > bottom && joist.box.z1 <= top)
      .map(
        ({ joist, place }): Standing => ({ id: `beside ${joist.id}`, shape: cornersOf(place), box: place }),
      ),
  ]
  const holds = holdsBlocks(members, top)
  const made: Made[] = []
  const replaced = new Set<string>()
  const held = new Map<string, Set<Block>>()
  const there = level.flatMap(frameBlock)
  const blocking = members.filter(({ role }) => role === 'blocking')
  const put = (edge: DeckEdge, place: BlockPlace, { id, mark, rule, ids }: Named): Made => {
    const box = boundsOf(place.corners)
    const one: Made = { edge, corners: place.corners, box, place, id, mark, rule, ids: [...ids] }
    standing.push({ id, shape: place.corners, box })
    made.push(one)
    return one
  }
  const wished = stretches.flatMap((stretch) =>
    stretch.posts.map((post) => {
      const centre = centreOf(job, stretch, post)
      const cut = underBorderAt(members, centre, halfPost(job))
      return { stretch, post, centre, cut, near: holds.filter(({ box }) => isNear(box, centre)) }
    }),
  )
  // one block stands in the way of the next: whose is first must not depend on the hand of the deck
  const middle = middleOf(stretches)
  const inTurn = wished.toSorted((a, b) => offFrom(middle, a.centre) - offFrom(middle, b.centre))
  // what carries cut ends goes where they are; a block behind a post may stand beside it
  for (const { stretch, post, centre, cut, near } of inTurn) {
    for (const wish of besideBorder(job, stretch, post, cut)) {
      const beside = standing.filter(({ box }) => isNear(box, centre))
      const place = wish.spots.map((spot) => clearAt(spot, near, cut, beside)).find((one) => one !== null)
      if (place !== undefined && place !== null) put(stretch.edge, place, wish)
    }
  }
  for (const { stretch, post, centre, cut, near } of inTurn) {
    const against = (one: Block) => lies(job, stretch, post, one)
    // one on each side of a post that cuts a border, where they stand tight
    const holding = new Set<Block>(made.filter((one) => one.ids.includes(post.id) && against(one)))
    held.set(post.id, holding)
    if (holding.size >= blocksFor(post)) continue
    const isBeside = ({ box }: { readonly box: Extent }) => isNear(box, centre)
    const beside = standing.filter(isBeside)
    const [madeBeside, thereBeside] = [made.filter(isBeside), there.filter(isBeside)]
    const named = (i: number): Named => ({ ...behindPost(post), id: `guard-blocking-${numberOf(post)}-${i}` })
    /** The block in the next bay of a line: one that stands there, or the place of a new one; beside the first where no other bay takes one. */
    const next = (line: Line, first: Block | BlockPlace): Block | BlockPlace | null => {
      let inOneBay: Block | BlockPlace | null = null
      for (const spot of nextBays(job, line)) {
        const place = blockThrough(near, spot.at, spot.way, cut)
        if (place === null || convexOverlap(place.corners, first.corners, HALF_BLOCK)) continue
        const overlaps = (one: Block) => convexOverlap(one.corners, place.corners, HALF_BLOCK)
        const there = madeBeside.find(overlaps) ?? thereBeside.find(overlaps)
        const found = there ?? (isClear(place, cut, beside) ? place : null)
        if (found === null || !isSame(found, place)) continue
        if (!isOneBay(near, place, first)) return found
        inOneBay ??= found
      }
      return inOneBay
    }
    const through = (one: Block): Way => ({ line: lineThrough(stretch, post, one, centre), first: one })
    const ways: readonly Way[] = [
      ...madeBeside.filter(against).map(through),
      ...lines(job, stretch, post).flatMap((line): readonly Way[] => {
        const place = clearAt({ at: line.at, way: line.way }, near, cut, beside)
        return place === null ? [] : [{ line, first: place }]
      }),
      ...thereBeside.filter(against).map(through),
    ]
    const chosen = ways.map(({ line, first }) => ({
      first,
      second: post.onJoist ? null : next(line, first),
    }))
    const best = chosen.find(({ second }) => second !== null) ?? chosen[0]
    if (best === undefined) continue
    for (const [i, one] of [best.first, best.second].entries()) {
      if (one === null) continue
      if ('ids' in one) {
        if (!one.ids.includes(post.id)) one.ids.push(post.id)
        holding.add(one)
      } else {
        for (const member of blocking)
          if (cut.includes(member.id) && convexOverlap(fromAbove(member), one.corners, 1))
            replaced.add(member.id)
        holding.add(put(stretch.edge, one, named(i + 1)))
      }
    }
  }
  return {
    members: made.map((one) => block(job, one.edge, one.place, one)),
    backing: wished.map(({ post }) => ({
      post: post.id,
      blocks: [...(held.get(post.id) ?? [])].map(({ id }) => id),
    })),
    replaced: [...replaced],
  }
}

/** Blocks that a post asks for: one beside a joist that runs into the edge, in two bays elsewhere. */
export function blocksFor({ onJoist }: GuardPost): number {
  return onJoist ? 1 : 2
}

/** A block where it stands, and the posts that it serves. */
interface Block {
  readonly id: string
  readonly box: Extent
  readonly corners: BlockPlace['corners']
  readonly ids: string[]
}

/** A line of blocks with the one behind the post, new or there already. */
interface Way {
  readonly line: Line
  readonly first: Block | BlockPlace
}

/** A block of the frame between its joists, over a beam or in the spans; one under a border is cut at posts. */
function frameBlock(member: Member): readonly Block[] {
  const [a, b, c, d, more] = fromAbove(member)
  if (member.role !== 'blocking' || member.cause.fields[0] === 'decking.border') return []
  if (a === undefined || b === undefined || c === undefined || d === undefined || more !== undefined)
    return []
  // the first two corners lie along its length
  const isAlong = Math.hypot(b.x - a.x, b.y - a.y) >= Math.hypot(c.x - b.x, c.y - b.y)
  const corners = isAlong ? ([a, b, c, d] as const) : ([b, c, d, a] as const)
  return [{ id: member.id, box: member.box, corners, ids: [] }]
}

interface Named {
  readonly id: string
  readonly mark: string
  readonly rule: string
  readonly ids: readonly string[]
}

/** A new block that has its place; a post that finds it against itself joins those that it serves. */
interface Made extends Omit<Named, 'ids'>, Block {
  readonly edge: DeckEdge
  readonly place: BlockPlace
}

/** The block through a place where it stands in nothing; null where there is none. */
function clearAt(
  { at, way }: BlockSpot,
  holds: readonly Hold[],
  cut: readonly string[],
  standing: readonly Standing[],
): BlockPlace | null {
  const place = blockThrough(holds, at, way, cut)
  return place !== null && isClear(place, cut, standing) ? place : null
}

/** Whether a block stands in nothing but what is cut there. */
function isClear({ corners }: BlockPlace, cut: readonly string[], standing: readonly Standing[]): boolean {
  const own = boundsOf(corners)
  return !standing.some(
    ({ id, shape, box }) => meet(box, own) && !cut.includes(id) && convexOverlap(shape, corners, 1),
  )
}

/** The middle of what the stretches' edges enclose. */
function middleOf(stretches: readonly GuardStretch[]): Spot {
  const { x0, x1, y0, y1 } = boundsOf(stretches.flatMap(({ edge }) => [edge.near, edge.far]))
  return { x: (x0 + x1) / 2, y: (y0 + y1) / 2 }
}

/** How far off a spot another lies, to the tick. */
function offFrom(a: Spot, b: Spot): number {
  return Math.round(Math.hypot(b.x - a.x, b.y - a.y))
}

/** Whether a member reaches the bays beside a post. */
function isNear({ x0, x1, y0, y1 }: Extent, { x, y }: Spot): boolean {
  const reach = feet(6)
  return x0 < x + reach && x1 > x - reach && y0 < y + reach && y1 > y - reach
}

type Extent = Pick<Member['box'], 'x0' | 'x1' | 'y0' | 'y1'>

function meet(a: Extent, b: Extent): boolean {
  return a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0
}

/** What stands there already, from above. */
interface Standing {
  readonly id: string
  readonly shape: Polygon
  readonly box: Extent
}

function behindPost(post: GuardPost): Omit<Named, 'id'> {
  return {
    mark: `GB${numberOf(post)}`,
    ids: [post.id],
    rule: post.onJoist
      ? 'One block behind each post that stands beside a joist, so that more than one joist takes its load (IRC 2021 R507.10, read in summaries)'
      : 'Blocks in two bays behind each post along a joist, so that more than one joist takes its load (IRC 2021 R507.10, read in summaries)',
  }
}

/** A block on each side of a post that cuts what carries a border, with the places that it may have. */
function besideBorder(
  job: Job,
  stretch: GuardStretch,
  post: GuardPost,
  cut: readonly string[],
): readonly (Named & { readonly spots: readonly BlockSpot[] })[] {
  if (cut.length === 0) return []
  const { edge, behind } = stretch
  const half = halfPost(job)
  const moves = Array.from({ length: MOVED / inches(0.5) + 1 }, (_, i) => i * inches(0.5))
  return [-1, 1].map((side, i) => ({
    id: `guard-border-blocking-${numberOf(post)}-${i + 1}`,
    mark: `GK${numberOf(post)}`,
    spots: moves.map((by) => ({
      at: spotAt(edge, post.at + side * (half + HALF_BLOCK + by), -(behind + half)),
      way: crossingOf(edge),
    })),
    ids: [post.id, ...cut],
    rule: 'One block on each side of a post that stands where a border’s inner edge is carried: it carries what is cut there (common practice, no source)',
  }))
}

function numberOf({ id }: GuardPost): string {
  return id.split('-')[2] ?? ''
}

function centreOf(job: Job, { edge, behind }: GuardStretch, { at }: GuardPost): Spot {
  return spotAt(edge, at, -(behind + halfPost(job)))
}

function block(
  job: Job,
  edge: DeckEdge,
  { corners, length, ends }: BlockPlace,
  { id, mark, rule, ids }: Named,
): Member {
  const { size } = job.frame.joists
  const top = edge.top - sectionOf(job.decking.size).thickness
  const isSquare = ends[0] === 0 && ends[1] === 0
  return {
    ...guardStick(job, {
      id,
      mark,
      role: 'guard blocking',
      size,
      length: ticks(Math.floor(length + 1e-6)),
      corners,
      levels: [top - sectionOf(size).depth, top],
      cause: {
        fields: id.startsWith('guard-border')
          ? ['decking.border', 'guard.where', 'guard.postSpacing']
          : ['guard.where', 'frame.joists.spacing'],
        ids,
        rule,
      },
    }),
    ...(isSquare ? {} : { ends }),
  }
}
