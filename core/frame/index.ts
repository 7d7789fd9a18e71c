export { frameDeck } from './frame-deck.ts'
export { holeSetOut } from './set-out.ts'
export type * from './types.ts'
