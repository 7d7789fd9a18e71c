export { replan } from './replan.ts'
export type * from './types.ts'
