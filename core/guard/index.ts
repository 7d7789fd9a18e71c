export { edgeDrops } from './edge-drops.ts'
export { BALUSTER_STOCK, BELOW_RAIL, layGuard, PANEL_STOCK } from './lay-guard.ts'
export type * from './types.ts'
