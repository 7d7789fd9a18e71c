import type { Design } from '../../estimate-types.ts'
import type { Member, PlanPoint } from '../../frame/index.ts'
import { isInside } from '../../geometry/index.ts'
import { isRectangle } from '../../job/index.ts'
import { inches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'
import { text } from './shapes.ts'

/** A mark beside a board stands so far inside the deck from the board's middle, and keeps so much off the joists. */
const INSIDE = inches(6)
const OFF_JOISTS = inches(5)
/** and so much off the posts, whose numbers stand beside them */
const OFF_POSTS = inches(24)
/** and so much off the marks of the joists */
const OFF_MARKS = inches(14)
/** Where along a board its mark is tried, best first; joists have theirs in the middle, and so end joists do not. */
const FARTHER = [0.3, 0.7, 0.28, 0.72, 0.33, 0.67, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85]
const SHARES = [0.5, 0.46, 0.54, 0.42, 0.58, 0.38, 0.62, ...FARTHER]
const END_JOIST_SHARES = [0.3, 0.25, 0.7, 0.35, ...FARTHER]

/** Marks on the plan: of the joists on their middle, of the boards round them beside them, of the beams. */
export function planMarks(design: Design): readonly Primitive[] {
  const joists = design.frame.members.filter(({ role }) => role === 'joist')
  return [
    ...joists.map(({ id, box, mark }) =>
      text(id, 'marks', (box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2, mark),
    ),
    ...beamMarks(design),
    ...boardMarks(design, joists),
  ]
}

/** Past the left end of a rectangle's beams, where nothing else is; else on the beam, beside its first post. */
function beamMarks({ frame, job }: Design): readonly Primitive[] {
  return frame.beams.map(({ id, mark, line: [from, to], postsAt, length }) => {
    if (isRectangle(job)) return text(id, 'marks', from.x - inches(8), from.y, mark)
    const [first = 0, second = length] = postsAt
    const share = (first + 0.3 * (second - first)) / length
    return text(id, 'marks', from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), mark)
  })
}

/** Ledgers, rims and end joists, the plies of one together. */
function boardMarks({ frame, layout }: Design, joists: readonly Member[]): readonly Primitive[] {
  const outlines = layout.levels.map(({ outline }) => outline)
  const boards = frame.members.filter(
    ({ role }) => role === 'ledger' || role === 'rim' || role === 'hip' || role === 'end joist',
  )
  const firsts = new Map(boards.toReversed().map((member) => [member.mark.replace(/[a-z]+$/, ''), member]))
  return [...firsts].reverse().map(([mark, member]) => {
    const [from, to] = middleLine(member)
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    const square = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length }
    const own = sideOfSeam(frame, member, { from, square })
    const sides = own === 0 ? [INSIDE, -INSIDE] : [own * INSIDE]
    const spots = (member.role === 'end joist' ? END_JOIST_SHARES : SHARES)
      .flatMap((share) =>
        sides.map((side) => ({
          x: from.x + share * (to.x - from.x) + side * square.x,
          y: from.y + share * (to.y - from.y) + side * square.y,
        })),
      )
      .filter((spot) => outlines.some((outline) => isInside(outline, spot)))
    const isClear = (spot: { readonly x: number; readonly y: number }): boolean =>
      frame.posts.every(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) > OFF_POSTS) &&
      joists.every(({ box }) => {
        const isAway = box.y1 - box.y0 > box.x1 - box.x0
        const [at, low, high] = isAway ? [spot.x, box.x0, box.x1] : [spot.y, box.y0, box.y1]
        const off = Math.hypot((box.x0 + box.x1) / 2 - spot.x, (box.y0 + box.y1) / 2 - spot.y)
        return off > OFF_MARKS && (at < low - OFF_JOISTS || at > high + OFF_JOISTS)
      })
    // where none is clear, the one farthest from what else is written
    const written = [
      ...frame.posts,
      ...joists.map(({ box }) => ({ x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 })),
    ]
    const room = (at: { readonly x: number; readonly y: number }): number =>
      Math.min(...written.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)))
    const spot = spots.find(isClear) ?? spots.toSorted((a, b) => room(b) - room(a))[0] ?? from
    return text(member.id, 'marks', spot.x, spot.y, mark)
  })
}

/** On which side of a hip's seam its ply lies, 1 or -1 along what is square to it: its mark stands there; 0 of other boards. */
function sideOfSeam(
  { hips }: Design['frame'],
  { id }: Member,
  { from, square }: { readonly from: PlanPoint; readonly square: PlanPoint },
): number {
  const hip = hips.find(({ memberIds }) => memberIds.includes(id))
  if (hip === undefined) return 0
  return Math.sign((from.x - hip.inside.x) * square.x + (from.y - hip.inside.y) * square.y)
}

function middleLine({ line, box }: Member): NonNullable<Member['line']> {
  if (line !== undefined) return line
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2]
  return box.x1 - box.x0 >= box.y1 - box.y0
    ? [
        { x: box.x0, y },
        { x: box.x1, y },
      ]
    : [
        { x, y: box.y0 },
        { x, y: box.y1 },
      ]
}
