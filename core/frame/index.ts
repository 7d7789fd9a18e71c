export { besideBeam } from './beside-beam.ts'
export {
  type Carrier,
  type CarrierEnd,
  type CarrierLine,
  type CarrierMark,
  carriers,
  type JointedPlan,
} from './carriers.ts'
export { courseWidths, slantingWidths } from './course-widths.ts'
export { distinctMarks } from './distinct-marks.ts'
export { footingDepth, footingUnder } from './footings.ts'
export { boundsOf, cornersOf, fromAbove, placedAlongEdge } from './footprint.ts'
export { frameDeck } from './frame-deck.ts'
export { type FramedZone, frameZones } from './frame-zones.ts'
export {
  HOLD_DOWN_LEG,
  HOLD_DOWN_REACH,
  type HouseHoldDown,
  houseHoldDowns,
  OFF_LEDGER,
} from './house-hold-downs.ts'
export { innerCorners } from './inner-corners.ts'
export { jointPlace, leadOf } from './joint-place.ts'
export { risersFor } from './level-steps.ts'
export { levelDimensions, placeAllPosts } from './placed-beams.ts'
export { diagonal, type HoleSetOut, holeSetOut } from './set-out.ts'
export { isSlanting } from './slanting-carriers.ts'
export type * from './types.ts'
