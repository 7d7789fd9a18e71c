import { turn } from '../geometry/index.ts'
import type { DeckEdge } from '../stairs/index.ts'
import { inches } from '../units/index.ts'

/** Two posts at a corner stand so far apart that a block goes behind either: common practice, no source. */
export const APART = inches(1.5)

/** Half of the angle inside a corner, in which two edges of an outline meet at a spot of both. */
export function halfAngle(edge: DeckEdge, next: DeckEdge, spot: DeckEdge['near']): number {
  const away = (one: DeckEdge) => {
    const other = one.near.x === spot.x && one.near.y === spot.y ? one.far : one.near
    return { x: (other.x - spot.x) / one.length, y: (other.y - spot.y) / one.length }
  }
  const [a, b] = [away(edge), away(next)]
  const between = Math.atan2(Math.abs(a.x * b.y - a.y * b.x), a.x * b.x + a.y * b.y)
  // where the next edge goes on to the side that this one faces, the corner juts into the deck
  const outside = turn({ x: 0, y: 0 }, a, edge.out) * turn({ x: 0, y: 0 }, a, b) > 0
  return (outside ? 2 * Math.PI - between : between) / 2
}

/**
 * From a corner to the face of the post there, one on each edge: as near as two posts clear each other by 1-1/2 in. They
 * stand behind their edges, so at a corner that juts out their inner corners come nearest, at one that juts in their
 * outer ones.
 * @param behind from the edges to the posts' faces, the greater of the two
 */
export function fromCorner(half: number, behind: number, post: number): number {
  const juts = half < Math.PI / 2
  const nearest = juts ? behind + post : behind
  return Math.max(0, nearest / Math.tan(half) + (APART * Math.SQRT1_2) / Math.sin(half))
}
