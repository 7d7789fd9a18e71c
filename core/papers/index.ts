export { boardDrawing, boardDrawings } from './drawings/board-drawings.ts'
export { deckingPlan, framingPlan } from './drawings/framing-plan.ts'
export type * from './types.ts'
