import { type PlanePoint, partsInside } from '../geometry/index.ts'
import type { Level } from '../layout/index.ts'
import { type DeckEdge, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import type { EdgePart } from './types.ts'

/** Levels this near each other leave no gap to fall through: common practice, no source. */
const BESIDE_LEVEL = inches(3)

/** Parts of an edge along which a level stands that is as high or higher: one cannot fall there. */
export function besideHigher(edge: DeckEdge, levels: readonly Level[]): readonly EdgePart[] {
  if (levels.length < 2) return []
  const outside = { from: spotAt(edge, 0, BESIDE_LEVEL), to: spotAt(edge, edge.length, BESIDE_LEVEL) }
  return levels
    .filter(({ deckTop }) => deckTop >= edge.top)
    .flatMap(({ outline }) => partsInside(outline, outside))
    .map(({ from, to }) => ({ from: alongEdge(edge, from), to: alongEdge(edge, to) }))
    .toSorted((a, b) => a.from - b.from)
}

/** How far along an edge a point lies. */
export function alongEdge({ near, along }: DeckEdge, { x, y }: PlanePoint): number {
  return (x - near.x) * along.x + (y - near.y) * along.y
}
