import { sectionOf } from '../data/index.ts'
import { fromAbove, type Member } from '../frame/index.ts'
import { convexOverlap, type Polygon } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type DeckEdge, type Spot, spotAt } from '../stairs/index.ts'
import { feet, inches, ticks } from '../units/index.ts'
import { type BlockPlace, blockThrough, holdsBlocks } from './block-between.ts'
import { guardStick } from './guard-stick.ts'
import type { GuardPost, GuardStretch } from './types.ts'
import { underBorderAt } from './under-border.ts'

/** Half the thickness of a block. */
const HALF = inches(0.75)

/** A block is moved so far past its post where something stands in its way: common practice, no source. */
const MOVED = inches(8)

/**
 * Blocks behind the posts of one loop of edges, in the bays where they stand: one beside a post that stands beside a
 * joist, two bays of them elsewhere, and on both sides of a post that cuts what carries a border. Each is as long as its
 * bay is clear there, and stands in nothing else.
 * @param members what stands along and behind the edges
 * @param posts the posts themselves
 */
export function guardBlocks(
  job: Job,
  stretches: readonly GuardStretch[],
  members: readonly Member[],
  posts: readonly Member[],
): readonly Member[] {
  const top = Math.max(0, ...stretches.map(({ edge }) => edge.top))
  // what is level with the joists: a dropped beam lies under them
  const bottom = top - inches(2)
  const standing = [
    ...members.filter(({ role, box }) => SOLID.has(role) && box.z1 > bottom && box.z1 <= top),
    ...posts,
  ].map((member): Standing => ({ id: member.id, shape: fromAbove(member) }))
  const holds = holdsBlocks(members, top)
  const made: Member[] = []
  const wished = stretches.flatMap((stretch) =>
    stretch.posts.flatMap((post) => {
      const centre = centreOf(job, stretch, post)
      const cut = underBorderAt(members, centre, halfPost(job))
      const near = holds.filter(({ box }) => isNear(box, centre))
      return wishes(job, stretch, post, cut).map((wish) => ({ ...wish, edge: stretch.edge, cut, near }))
    }),
  )
  // what carries cut ends goes where they are; a block behind a post may stand beside it
  const first = wished.filter(({ isFirst }) => isFirst)
  for (const { edge, cut, near, ...wish } of [...first, ...wished.filter(({ isFirst }) => !isFirst)]) {
    const place = firstClear(wish.bays, near, cut, standing)
    if (place === null) continue
    standing.push({ id: wish.id, shape: place.corners })
    made.push(block(job, edge, place, wish))
  }
  return made
}

/** What a block may not stand in. */
const SOLID: ReadonlySet<Member['role']> = new Set([
  'joist',
  'end joist',
  'rim',
  'ledger',
  'header',
  'hip',
  'beam ply',
  'blocking',
  'landing beam',
  'landing joist',
])

/** The first of the places through which a block goes that stands in nothing; null where there is none. */
function firstClear(
  bays: Wish['bays'],
  holds: readonly Member[],
  cut: readonly string[],
  standing: readonly Standing[],
): BlockPlace | null {
  for (const { at, way } of bays) {
    const place = blockThrough(holds, at, way, cut)
    if (place === null) continue
    const clash = standing.some(
      ({ id, shape }) => !cut.includes(id) && convexOverlap(shape, place.corners, 1),
    )
    if (!clash) return place
  }
  return null
}

/** Whether a member reaches the bays beside a post. */
function isNear({ x0, x1, y0, y1 }: Member['box'], { x, y }: Spot): boolean {
  const reach = feet(6)
  return x0 < x + reach && x1 > x - reach && y0 < y + reach && y1 > y - reach
}

/** What stands there already, from above. */
interface Standing {
  readonly id: string
  readonly shape: Polygon
}

interface Wish {
  readonly id: string
  readonly mark: string
  /** places that it goes through, the best first */
  readonly bays: readonly { readonly at: Spot; readonly way: Spot }[]
  readonly rule: string
  readonly ids: readonly string[]
  /** it has its place before all others */
  readonly isFirst: boolean
}

function wishes(job: Job, stretch: GuardStretch, post: GuardPost, cut: readonly string[]): readonly Wish[] {
  const { edge, behind } = stretch
  const number = post.id.split('-')[2]
  const half = halfPost(job)
  const middle = (stretch.from + stretch.to) / 2
  const inward = post.at <= middle ? 1 : -1
  const crossing = { x: 0 - edge.out.x, y: 0 - edge.out.y }
  const moves = Array.from({ length: MOVED / inches(0.5) + 1 }, (_, i) => i * inches(0.5))
  // the next bay begins about a spacing on; an odd one sooner or later
  const onTo = (bay: number) =>
    bay === 0 ? [0] : [0, 2, -2, 4, -4, 6, -6].map((odd) => bay * job.frame.joists.spacing + inches(odd))
  /** a block across the edge, beside the post on one side, or further along */
  const beside = (bay: number, side: number) =>
    onTo(bay).map((on) => ({ at: spotAt(edge, post.at + side, -(behind + half + on)), way: crossing }))
  const onEither = (bay: number) =>
    moves.flatMap((by) => [inward, -inward].flatMap((side) => beside(bay, side * (half + HALF + by))))
  /** a block along the edge, behind the post or further back */
  const backOf = (bay: number) =>
    moves.flatMap((by) =>
      onTo(bay).map((on) => ({
        at: spotAt(edge, post.at + inward * on, -(behind + 2 * half + HALF + by)),
        way: edge.along,
      })),
    )
  const bays = (bay: number) =>
    post.onJoist || stretch.crossed ? [...backOf(bay), ...onEither(bay)] : [...onEither(bay), ...backOf(bay)]
  const behindPost = Array.from(
    { length: post.onJoist ? 1 : 2 },
    (_, i): Wish => ({
      id: `guard-blocking-${number}-${i + 1}`,
      mark: `GB${number}`,
      bays: bays(i),
      ids: [post.id],
      isFirst: false,
      rule: post.onJoist
        ? 'One block behind each post that stands beside a joist, so that more than one joist takes its load (IRC 2021 R507.10, read in summaries)'
        : 'Blocks in two bays behind each post along a joist, so that more than one joist takes its load (IRC 2021 R507.10, read in summaries)',
    }),
  )
  if (cut.length === 0) return behindPost
  const atBorder = [-1, 1].map(
    (side, i): Wish => ({
      id: `guard-border-blocking-${number}-${i + 1}`,
      mark: `GK${number}`,
      bays: moves.flatMap((by) => beside(0, side * (half + HALF + by))),
      ids: [post.id, ...cut],
      isFirst: true,
      rule: 'One block on each side of a post that stands where a border’s inner edge is carried: it carries what is cut there (common practice, no source)',
    }),
  )
  return [...atBorder, ...behindPost]
}

function halfPost({ guard }: Job): number {
  return sectionOf(guard.postSize).thickness / 2
}

function centreOf(job: Job, { edge, behind }: GuardStretch, { at }: GuardPost): Spot {
  return spotAt(edge, at, -(behind + halfPost(job)))
}

function block(
  job: Job,
  edge: DeckEdge,
  { corners, length, ends }: BlockPlace,
  { id, mark, rule, ids }: Pick<Wish, 'id' | 'mark' | 'rule' | 'ids'>,
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
