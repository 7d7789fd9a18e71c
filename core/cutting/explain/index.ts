export { explainJoints, placeOf } from './explain-joints.ts'
export type * from './types.ts'
export { forbidStock, holdInOnePiece } from './wishes.ts'
