export { INCISING, LOAD_DURATION, REPETITIVE, SIZE_FACTOR, WET_SERVICE } from './adjustment-factors.ts'
export { DIMENSION_LUMBER } from './dimension-lumber.ts'
export { TIMBERS } from './timbers.ts'
export type { DesignValues, TabledSpecies } from './types.ts'
