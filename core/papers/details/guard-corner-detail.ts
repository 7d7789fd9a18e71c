import type { Estimate } from '../../estimate-types.ts'
import type { GuardPost, GuardStretch } from '../../guard/index.ts'
import { type Spot, spotAt } from '../../stairs/index.ts'
import { inches, printLength, ticks } from '../../units/index.ts'
import { postMark } from '../drawings/guard-plan.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { type Detail, detail } from './detail.ts'
import { marksOf, nearTo } from './hip-details.ts'
import { membersWithin, shapeWithin, type Window } from './seen-from-above.ts'

const HALF = inches(17)
const FRAME = new Set(['rim', 'joist', 'end joist', 'hip'])

interface CornerEnd {
  readonly stretch: GuardStretch
  readonly post: GuardPost
  readonly corner: Spot
}

/** Two stretches of guard that turn a corner of the deck, from above: posts, blocks and what they are held by. */
export function guardCornerDetail({ job, frame, guard }: Estimate): Detail | null {
  if (guard === null) return null
  const ends = guard.stretches.flatMap(endsOf)
  const pairs = ends.flatMap((one, i) =>
    ends
      .slice(i + 1)
      .filter(({ corner, stretch }) => isSame(corner, one.corner) && stretch.edge.id !== one.stretch.edge.id)
      .map((other) => [one, other] as const),
  )
  const square = pairs.find((pair) => pair.every(({ stretch }) => isOnAxis(stretch)))
  if (square === undefined) return null
  const [{ corner }] = square
  const inward = {
    x: -square.reduce((sum, { stretch }) => sum + stretch.edge.out.x, 0),
    y: -square.reduce((sum, { stretch }) => sum + stretch.edge.out.y, 0),
  }
  const about = { x: corner.x + inward.x * inches(13), y: corner.y + inward.y * inches(13) }
  const window: Window = { about, half: HALF }
  const posts = guard.members.filter(({ id }) => square.some(({ post }) => post.id === id))
  const blocks = guard.members.filter(
    ({ role, cause }) => role === 'guard blocking' && square.some(({ post }) => cause.ids.includes(post.id)),
  )
  const wood = nearTo(frame.members, window).filter(({ role }) => FRAME.has(role))
  const id = 'detail-guard-corner'
  const at = { x: corner.x - about.x, y: corner.y - about.y }
  const edge = HALF + inches(4)
  return detail(
    id,
    'Guard at a corner of the deck, from above, decking off',
    [
      ...membersWithin(wood, window, { fill: 'wood', weight: 'fine' }),
      ...membersWithin(blocks, window, { fill: 'wood', weight: 'medium' }),
      ...posts.flatMap(({ id: post, box }) =>
        shapeWithin(
          post,
          [
            { x: box.x0, y: box.y0 },
            { x: box.x1, y: box.y0 },
            { x: box.x1, y: box.y1 },
            { x: box.x0, y: box.y1 },
          ],
          window,
          { fill: 'ground', weight: 'heavy' },
        ),
      ),
      ...square.map(({ stretch, post }) => {
        const spot = spotAt(stretch.edge, post.at, 0)
        const place = { x: spot.x - about.x, y: spot.y - about.y }
        return stretch.edge.out.y !== 0
          ? levelDimension(id, Math.min(at.x, place.x), Math.max(at.x, place.x), at.y, -inward.y * inches(4))
          : uprightDimension(
              id,
              Math.min(at.y, place.y),
              Math.max(at.y, place.y),
              at.x,
              -inward.x * inches(4),
            )
      }),
    ],
    [
      {
        at: centreOf(posts[0]?.box, about),
        to: [inward.x * edge, -inward.y * inches(6)],
        text: `Two posts ${job.guard.postSize}, one on each edge: ${square
          .map(
            ({ post, stretch }) =>
              `${postMark(post.id)}, its centre ${printLength(fromCorner(post, stretch, corner))} from the corner`,
          )
          .join(
            '; ',
          )}. Each stands inside the rim, not notched; rails end at a post, caps meet over the corner.`,
      },
      {
        at: centreOf(posts[1]?.box, about),
        to: [-inward.x * inches(6), inward.y * edge],
        text:
          job.guard.fixing === 'hold-downs'
            ? 'Each post: two bolts through rim and post, the upper one into a hold-down of its own, which is fixed to a joist or a block that reaches the next joist.'
            : 'Each post: two bolts through rim and post, blocked so that the rim cannot turn.',
      },
      {
        at: [inward.x * inches(10), inward.y * inches(4)],
        to: [inward.x * edge, inward.y * inches(12)],
        text: `Blocks behind these posts: ${blocks.length === 0 ? 'none' : blocks.map(({ mark, length }) => `${mark} ${printLength(length)}`).join(', ')}, ${job.frame.joists.size}, tight between the joists, so that more than one joist takes the push${wood.length === 0 ? '' : `; rims and joists here: ${marksOf(wood)}`}.`,
      },
    ],
  )
}

/** Both ends of a stretch that reach a corner of the outline, with the post that stands there. */
function endsOf(stretch: GuardStretch): readonly CornerEnd[] {
  const { edge, from, to, posts } = stretch
  const [first, last] = [posts[0], posts.at(-1)]
  return [
    ...(first !== undefined && from === 0 ? [{ stretch, post: first, corner: edge.near }] : []),
    ...(last !== undefined && to === edge.length ? [{ stretch, post: last, corner: edge.far }] : []),
  ]
}

function fromCorner({ at }: GuardPost, { edge }: GuardStretch, corner: Spot) {
  return ticks(Math.round(isSame(corner, edge.near) ? at : edge.length - at))
}

function isOnAxis({ edge }: GuardStretch): boolean {
  return edge.out.x === 0 || edge.out.y === 0
}

function isSame(a: Spot, b: Spot): boolean {
  return Math.abs(a.x - b.x) < 1 && Math.abs(a.y - b.y) < 1
}

function centreOf(
  box: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number } | undefined,
  about: Spot,
): readonly [number, number] {
  return box === undefined ? [0, 0] : [(box.x0 + box.x1) / 2 - about.x, (box.y0 + box.y1) / 2 - about.y]
}
