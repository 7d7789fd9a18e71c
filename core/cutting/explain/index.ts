export { type ExplainOptions, explainJoints, placeOf } from './explain-joints.ts'
export type * from './types.ts'
export { forbidJoint, forbidStock, holdInOnePiece } from './wishes.ts'
