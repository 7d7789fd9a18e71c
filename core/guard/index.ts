export { BALUSTER_STOCK, layGuard, PANEL_STOCK } from './lay-guard.ts'
export type * from './types.ts'
