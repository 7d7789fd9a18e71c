export { createPool, type Pool } from './pool.ts'
export { Stopped } from './stopped.ts'
