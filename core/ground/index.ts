export { type ConcreteOrder, concreteOrder } from './concrete-order.ts'
export { type DiggingWay, diggingWays } from './digging-ways.ts'
export { type FootingRow, footingSchedule } from './footing-schedule.ts'
export { type FoundEdit, type FoundOption, foundOff } from './found-off.ts'
export { frameEdges, overallEdges } from './frame-edges.ts'
export {
  type GroundAsked,
  type GroundReport,
  type GroundResult,
  groundReport,
} from './ground-report.ts'
export { allHoles, type Hole } from './holes.ts'
export { type LayoutCheck, layoutChecks } from './layout-checks.ts'
export { type CornerSetOut, layoutCorners } from './layout-corners.ts'
export { type Crossing, type LayoutString, layoutStrings } from './layout-strings.ts'
export { type MeasuredPosts, measuredPosts } from './measured-posts.ts'
export { sightOf } from './sight.ts'
export { soilCautions } from './soil-cautions.ts'
export { wallCorners, wallWords } from './strings-around-house.ts'
export { type TubePlan, tubePlan } from './tube-plan.ts'
export { isBeforeOneWall, type Tie, tiesTo } from './wall-ties.ts'
