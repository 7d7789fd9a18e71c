export { deckEdges, sideOf, spotAt } from './deck-edges.ts'
export { layStairs } from './lay-stairs.ts'
export { onFlight } from './place-flights.ts'
export type * from './types.ts'
