import type { Design } from '../../estimate-types.ts'
import type { DeckEdge } from '../../stairs/index.ts'

/**
 * An edge by the side that it faces and its level; where the deck has more edges than sides also by its number, and the
 * corner from which places along it run: where the ring with the 0 stands on the guard's plan.
 */
export function edgeWords(edge: DeckEdge, { layout }: Pick<Design, 'layout'>): string {
  const { number, side } = edge
  const several = layout.levels.length > 1
  const level = layout.levels.find(({ edges }) => edges.some((one) => one.number === number))
  const words = `${side} side${several && level !== undefined ? ` of level ${level.number}` : ''}`
  return several || layout.edges.length > 4 ? `${words} (edge ${number}, ${originWords(edge, level)})` : words
}

/** A corner has the number of the edge that begins there; the near end may be either of the edge's own. */
function originWords(
  { number, near }: DeckEdge,
  level: Design['layout']['levels'][number] | undefined,
): string {
  const at = level?.outline.findIndex(({ x, y }) => x === near.x && y === near.y) ?? -1
  return `from corner ${level?.edges[at]?.number ?? number}`
}
