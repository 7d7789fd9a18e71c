export type * from './methods.ts'
