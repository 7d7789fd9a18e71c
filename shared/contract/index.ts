export type * from './bridge.ts'
export type * from './methods.ts'
