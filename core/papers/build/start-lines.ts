import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { meeting } from '../../geometry/index.ts'
import { type DeckEdge, deckEdges, type Spot, spotAt } from '../../stairs/index.ts'
import { nearestSixteenth, printLength, type Ticks } from '../../units/index.ts'

type Part = Pick<Design, 'frame' | 'layout'>

/** Where a start line meets the edge of the frame. */
export interface StartMark {
  /** S1, S2 */
  readonly name: string
  readonly edge: DeckEdge
  /** from the edge's near end */
  readonly along: Ticks
  readonly spot: Spot
}

/** A line over the frame that the first board of a part is laid to. */
export interface StartLine {
  readonly board: Member
  /** the board that lies on the line's other side */
  readonly beside: Member | null
  readonly marks: readonly [StartMark, StartMark]
  /** from mark to mark */
  readonly length: Ticks
}

/**
 * For each part whose boards lie at an angle, the long edge of its longest board, out to the frame's edges on both sides:
 * at an angle no board lies along a wall or a rim, so there is nothing else to measure from. The longest board shows an
 * error of its angle best: common practice, no source.
 */
export function startLines({ frame, layout }: Part): readonly StartLine[] {
  const edges = deckEdges(layout)
  let number = 0
  return frame.decked.flatMap(({ zone, degrees }): readonly StartLine[] => {
    const boards = frame.members.filter(({ lay }) => lay?.part === 'field' && lay.zone === zone)
    const board = boards.reduce<Member | null>(
      (longest, one) => (longest === null || one.length > longest.length ? one : longest),
      null,
    )
    const level = layout.zones.find(({ id }) => id === zone)?.level
    const numbers = new Set(
      layout.levels
        .filter((one) => one.number === level)
        .flatMap((one) => one.edges.map((edge) => edge.number)),
    )
    if (degrees === 0 || board?.line === undefined || board.plan === undefined) return []
    const rowBefore = boards.find(({ lay }) => lay?.row === (board.lay?.row ?? 0) - 1) ?? null
    const line = longEdge(board.plan, board.line, middleOf(rowBefore))
    const ends = crossings(
      line,
      edges.filter((edge) => numbers.has(edge.number)),
    )
    if (ends === null) return []
    const [from, to] = ends.map((end) => ({ ...end, name: `S${++number}` })) as [StartMark, StartMark]
    const length = Math.hypot(to.spot.x - from.spot.x, to.spot.y - from.spot.y)
    return [{ board, beside: rowBefore, marks: [from, to], length: nearestSixteenth(length) }]
  })
}

/** A line by a place on it and its way, a unit vector. */
interface Ray {
  readonly at: Spot
  readonly way: Spot
}

/** Of a board's two long edges the one that is nearer to a spot; either where there is none. */
function longEdge(plan: readonly Spot[], [from, to]: readonly [Spot, Spot], near: Spot | null): Ray {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const aside = ({ x, y }: Spot): number => (x - from.x) * -way.y + (y - from.y) * way.x
  const side = near === null || aside(near) >= 0 ? 1 : -1
  const offset = Math.max(...plan.map((corner) => side * aside(corner)))
  const at = {
    x: (from.x + to.x) / 2 - side * offset * way.y,
    y: (from.y + to.y) / 2 + side * offset * way.x,
  }
  return { at, way }
}

/** Where the line first meets an edge on either side of its place. */
function crossings({ at, way }: Ray, edges: readonly DeckEdge[]): readonly Omit<StartMark, 'name'>[] | null {
  const line = { from: at, to: { x: at.x + way.x, y: at.y + way.y } }
  const places = edges.flatMap((edge) => {
    const met = meeting(line, { from: edge.near, to: edge.far })
    if (met === null) return []
    const reach = (met.x - at.x) * way.x + (met.y - at.y) * way.y
    const along = (met.x - edge.near.x) * edge.along.x + (met.y - edge.near.y) * edge.along.y
    return along < -1 || along > edge.length + 1
      ? []
      : [{ reach, edge, along: nearestSixteenth(along), spot: spotAt(edge, along, 0) }]
  })
  const before = places.filter(({ reach }) => reach < 0).sort((a, b) => b.reach - a.reach)[0]
  const after = places.filter(({ reach }) => reach > 0).sort((a, b) => a.reach - b.reach)[0]
  return before === undefined || after === undefined ? null : [before, after]
}

function middleOf(board: Member | null): Spot | null {
  if (board === null) return null
  const [from, to] = board.line ?? [
    { x: board.box.x0, y: board.box.y0 },
    { x: board.box.x1, y: board.box.y1 },
  ]
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
}

/** Where the two marks of a line are made, how far apart they come, and which board lies on it. */
export function startWords({ board, beside, marks, length }: StartLine): string {
  const [from, to] = marks.map((mark) => `${mark.name} ${markWords(mark)}`)
  const side = beside === null ? '' : `, its edge beside ${beside.mark}`
  return `${from}; ${to}. The two come ${printLength(length)} apart. ${board.mark} lies to that line${side}.`
}

/** The drawing shows on which edge, where a deck has several that face one side. */
function markWords({ edge, along }: StartMark): string {
  const end = edge.near.y < edge.far.y ? 'end nearer the house' : 'left end'
  return `on the ${edge.wall ? 'wall' : `${edge.side} side`}, ${printLength(along)} from its ${end}`
}
