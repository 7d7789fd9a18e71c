export {
  checkFrame,
  checkSpansOfBeams,
  checksBesideTables,
  checksWith,
  checkWood,
  type WoodChecks,
} from './check-frame.ts'
export { type FootingLoad, footingLoads } from './footing-loads.ts'
export { membersNamed } from './hanging-joists.ts'
export { percent } from './judge.ts'
export { bearingOf } from './soil.ts'
export { stairFootingLoads } from './stair-footing-loads.ts'
export type * from './types.ts'
