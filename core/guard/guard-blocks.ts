import { sectionOf } from '../data/index.ts'
import { fromAbove, type Member } from '../frame/index.ts'
import { convexOverlap, type Polygon } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { type DeckEdge, type Spot, spotAt } from '../stairs/index.ts'
import { feet, inches, ticks } from '../units/index.ts'
import { type BlockPlace, blockThrough, holdsBlocks } from './block-between.ts'
import { cornersBehind } from './boards-behind.ts'
import { FRAME_WOOD } from './frame-wood.ts'
import { guardStick } from './guard-stick.ts'
import type { GuardPost, GuardStretch } from './types.ts'
import { underBorderAt } from './under-border.ts'

/** Half the thickness of a block. */
const HALF = inches(0.75)

/** A block beside a cut border is moved so far past its post where something stands in its way: common practice, no source. */
const MOVED = inches(8)

/**
 * Blocks behind the posts of one loop of edges, in the bays where they stand: one beside a post that stands beside a
 * joist, two bays of them elsewhere, in one line, and on both sides of a post that cuts what carries a border. The one
 * behind a post stands against it, as long as its bay is clear there and in nothing else; one of another post that lies
 * against it serves both. Where none fits there is none: the check of guard posts names the post.
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
    ...members.filter(({ role, box }) => FRAME_WOOD.has(role) && box.z1 > bottom && box.z1 <= top),
    ...posts,
  ].map((member): Standing => ({ id: member.id, shape: fromAbove(member) }))
  const holds = holdsBlocks(members, top)
  const made: Made[] = []
  const put = (edge: DeckEdge, place: BlockPlace, { id, mark, rule, ids }: Named) => {
    standing.push({ id, shape: place.corners })
    made.push({ edge, place, id, mark, rule, ids: [...ids] })
  }
  const wished = stretches.flatMap((stretch) =>
    stretch.posts.map((post) => {
      const centre = centreOf(job, stretch, post)
      const cut = underBorderAt(members, centre, halfPost(job))
      return { stretch, post, centre, cut, near: holds.filter(({ box }) => isNear(box, centre)) }
    }),
  )
  // what carries cut ends goes where they are; a block behind a post may stand beside it
  for (const { stretch, post, cut, near } of wished) {
    for (const wish of besideBorder(job, stretch, post, cut)) {
      const place = wish.spots.map((spot) => clearAt(spot, near, cut, standing)).find((one) => one !== null)
      if (place !== undefined && place !== null) put(stretch.edge, place, wish)
    }
  }
  for (const { stretch, post, centre, cut, near } of wished) {
    const named = (i: number): Named => ({ ...behindPost(post), id: `guard-blocking-${numberOf(post)}-${i}` })
    let line: Line | null = null
    const against = made.find((one) => one.id.startsWith('guard-blocking') && lies(job, stretch, post, one))
    if (against !== undefined) {
      against.ids.push(post.id)
      line = lineThrough(stretch, post, against.place, centre)
    } else {
      for (const one of lines(job, stretch, post)) {
        const place = clearAt({ at: one.at, way: one.way }, near, cut, standing)
        if (place === null) continue
        put(stretch.edge, place, named(1))
        line = one
        break
      }
    }
    if (line === null || post.onJoist) continue
    for (const spot of nextBays(job, line)) {
      const place = blockThrough(near, spot.at, spot.way, cut)
      if (place === null) continue
      const there = made.find((one) => convexOverlap(one.place.corners, place.corners, HALF))
      if (there === undefined && clearAt(spot, near, cut, standing) === null) continue
      if (there === undefined) put(stretch.edge, place, named(2))
      else if (isSame(there.place, place)) there.ids.push(post.id)
      else continue
      break
    }
  }
  return made.map((one) => block(job, one.edge, one.place, one))
}

interface Named {
  readonly id: string
  readonly mark: string
  readonly rule: string
  readonly ids: readonly string[]
}

/** A block that has its place; a post that finds it against itself joins those that it serves. */
interface Made extends Omit<Named, 'ids'> {
  readonly edge: DeckEdge
  readonly place: BlockPlace
  readonly ids: string[]
}

interface BlockSpot {
  readonly at: Spot
  readonly way: Spot
}

/** A line of blocks: through a place, along a unit vector, and the ways on which the next bay may lie. */
interface Line extends BlockSpot {
  readonly on: readonly Spot[]
}

/** The block through a place where it stands in nothing; null where there is none. */
function clearAt(
  { at, way }: BlockSpot,
  holds: readonly Member[],
  cut: readonly string[],
  standing: readonly Standing[],
): BlockPlace | null {
  const place = blockThrough(holds, at, way, cut)
  if (place === null) return null
  const clash = standing.some(({ id, shape }) => !cut.includes(id) && convexOverlap(shape, place.corners, 1))
  return clash ? null : place
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

/** Where the block behind a post may stand, the best first: behind it along the edge, or beside it across the edge. */
function lines(job: Job, stretch: GuardStretch, post: GuardPost): readonly Line[] {
  const { edge, behind } = stretch
  const half = halfPost(job)
  const inward = inwardOf(stretch, post)
  const along = { x: inward * edge.along.x, y: inward * edge.along.y }
  const back: Line = {
    at: spotAt(edge, post.at, -(behind + 2 * half + HALF)),
    way: edge.along,
    on: [along, { x: -along.x, y: -along.y }],
  }
  const crossing = crossingOf(edge)
  const beside = [inward, -inward].map(
    (side): Line => ({
      at: spotAt(edge, post.at + side * (half + HALF), -(behind + half)),
      way: crossing,
      on: [crossing],
    }),
  )
  return post.onJoist || stretch.crossed ? [back, ...beside] : [...beside, back]
}

/** Places in the next bay of a line: it begins about a spacing on; an odd one sooner or later. */
function nextBays(job: Job, { at, way, on }: Line): readonly BlockSpot[] {
  return on.flatMap((step) =>
    [0, 2, -2, 4, -4, 6, -6].map((odd) => {
      const far = job.frame.joists.spacing + inches(odd)
      return { at: { x: at.x + far * step.x, y: at.y + far * step.y }, way }
    }),
  )
}

/** Whether a block lies against the back or a side of a post, over an inch of it at least. */
function lies(job: Job, { edge, behind }: GuardStretch, { at }: GuardPost, { place }: Made): boolean {
  const half = halfPost(job)
  const inch = inches(1)
  const near = inches(1 / 8)
  const back = cornersBehind(
    edge,
    [at - half + inch, at + half - inch],
    [behind + half, behind + 2 * half + near],
  )
  const sides = cornersBehind(
    edge,
    [at - half - near, at + half + near],
    [behind + inch, behind + 2 * half - inch],
  )
  return [back, sides].some((shape) => convexOverlap(shape, place.corners, 1))
}

/** The line of a block that another post has, from where it meets this one. */
function lineThrough(stretch: GuardStretch, post: GuardPost, { corners }: BlockPlace, centre: Spot): Line {
  const [a, b, c] = corners
  const long = Math.hypot(b.x - a.x, b.y - a.y)
  const way = { x: (b.x - a.x) / long, y: (b.y - a.y) / long }
  const middle = { x: (a.x + c.x) / 2, y: (a.y + c.y) / 2 }
  const along = (centre.x - middle.x) * way.x + (centre.y - middle.y) * way.y
  const crossing = crossingOf(stretch.edge)
  const inward = inwardOf(stretch, post)
  const across = way.x * crossing.x + way.y * crossing.y
  const towards =
    Math.abs(across) > 0.7 ? across : inward * (way.x * stretch.edge.along.x + way.y * stretch.edge.along.y)
  const step = { x: Math.sign(towards) * way.x, y: Math.sign(towards) * way.y }
  return {
    at: { x: middle.x + along * way.x, y: middle.y + along * way.y },
    way,
    on: Math.abs(across) > 0.7 ? [step] : [step, { x: -step.x, y: -step.y }],
  }
}

function isSame(a: BlockPlace, b: BlockPlace): boolean {
  return a.corners.every((corner) =>
    b.corners.some((other) => Math.hypot(other.x - corner.x, other.y - corner.y) < 2),
  )
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
      at: spotAt(edge, post.at + side * (half + HALF + by), -(behind + half)),
      way: crossingOf(edge),
    })),
    ids: [post.id, ...cut],
    rule: 'One block on each side of a post that stands where a border’s inner edge is carried: it carries what is cut there (common practice, no source)',
  }))
}

function numberOf({ id }: GuardPost): string {
  return id.split('-')[2] ?? ''
}

/** Along the edge towards the middle of a stretch. */
function inwardOf({ from, to }: GuardStretch, { at }: GuardPost): 1 | -1 {
  return at <= (from + to) / 2 ? 1 : -1
}

function crossingOf({ out }: DeckEdge): Spot {
  return { x: 0 - out.x, y: 0 - out.y }
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
