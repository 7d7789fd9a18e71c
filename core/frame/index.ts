export { frameDeck } from './frame-deck.ts'
export { type HoleSetOut, holeSetOut } from './set-out.ts'
export type * from './types.ts'
