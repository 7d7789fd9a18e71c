export { type ExplainOptions, explainJoints } from './explain-joints.ts'
export type * from './types.ts'
export { forbidJoint, forbidStock, holdInOnePiece } from './wishes.ts'
