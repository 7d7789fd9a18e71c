export type * from './types.ts'
export type * from './lp-port.ts'
