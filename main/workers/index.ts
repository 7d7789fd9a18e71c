export { createPool, type Pool, type PoolOptions } from './pool.ts'
export { Stopped } from './stopped.ts'
