export { sparesFor } from './spares-for.ts'
export type * from './types.ts'
