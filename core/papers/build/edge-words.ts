import type { Design } from '../../estimate-types.ts'
import type { DeckEdge } from '../../stairs/index.ts'

/**
 * An edge by the side that it faces and its level; where the deck has more edges than sides also by its number, which is
 * that of the corner on the footing layout where it begins.
 */
export function edgeWords({ number, side }: DeckEdge, { layout }: Pick<Design, 'layout'>): string {
  const several = layout.levels.length > 1
  const level = layout.levels.find(({ edges }) => edges.some((edge) => edge.number === number))
  const words = `${side} side${several && level !== undefined ? ` of level ${level.number}` : ''}`
  return several || layout.edges.length > 4 ? `${words} (edge ${number}, from corner ${number})` : words
}
