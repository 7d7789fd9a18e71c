export type { Task } from './latest-run.ts'
export { createPool, type Pool } from './pool.ts'
export { Stopped } from './stopped.ts'
