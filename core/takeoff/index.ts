export { skus } from './skus.ts'
export { takeOff } from './take-off.ts'
export { taskRates } from './task-rates.ts'
export type * from './types.ts'
