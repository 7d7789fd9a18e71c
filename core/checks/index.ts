export { checkFrame, checkSpansOfBeams, spansBesideTables } from './check-frame.ts'
export { type FootingLoad, footingLoads } from './footing-loads.ts'
export { bearingOf } from './soil.ts'
export type * from './types.ts'
