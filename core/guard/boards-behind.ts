import { fromAbove, type Member } from '../frame/index.ts'
import { type DeckEdge, type Spot, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'

/** Boards along an edge are three plies at most. */
const MOST = inches(4.75)

/** A board lies along an edge where it shares so much of it. */
const SHARED = inches(6)

/** What may stand along an edge of the deck or of a landing; a joist where one closes the last bay, 3 in off the end joist. */
const ALONG: ReadonlySet<Member['role']> = new Set([
  'rim',
  'joist',
  'end joist',
  'ledger',
  'beam ply',
  'landing beam',
  'landing joist',
])

/** Where a place lies by an edge: along it from its near end, and behind it. */
export function byEdge({ near, along, out }: DeckEdge, { x, y }: Spot) {
  const [dx, dy] = [x - near.x, y - near.y]
  return { along: dx * along.x + dy * along.y, behind: -(dx * out.x + dy * out.y) }
}

/** From an edge to the inner face of the boards that stand along it; one of 1-1/2 in where none is found. */
export function boardsBehind(edge: DeckEdge, members: readonly Member[]): number {
  const thick = members.flatMap((member) => {
    // what carries a border is cut at the posts
    if (!ALONG.has(member.role) || member.cause.fields[0] === 'decking.border') return []
    if (member.box.z1 > edge.top || member.box.z1 < edge.top - inches(2)) return []
    const corners = fromAbove(member).map((corner) => byEdge(edge, corner))
    const behind = corners.map((corner) => corner.behind)
    const along = corners.map((corner) => corner.along)
    const shared = Math.min(edge.length, Math.max(...along)) - Math.max(0, Math.min(...along))
    const inner = Math.max(...behind)
    return Math.min(...behind) < -2 || inner < 1 || inner > MOST || shared < Math.min(SHARED, edge.length / 2)
      ? []
      : [inner]
  })
  return thick.length === 0 ? inches(1.5) : Math.max(...thick)
}

/** Corners of a place along an edge and behind it, in order round it. */
export function cornersBehind(
  edge: DeckEdge,
  [from, to]: readonly [number, number],
  [outer, inner]: readonly [number, number],
): readonly [Spot, Spot, Spot, Spot] {
  return [
    spotAt(edge, from, -outer),
    spotAt(edge, to, -outer),
    spotAt(edge, to, -inner),
    spotAt(edge, from, -inner),
  ]
}
