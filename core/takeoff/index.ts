export { type Sku, skus } from './skus.ts'
export { takeOff } from './take-off.ts'
export { type TaskRate, taskRates } from './task-rates.ts'
export type * from './types.ts'
