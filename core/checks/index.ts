export { checkFrame } from './check-frame.ts'
export type * from './types.ts'
