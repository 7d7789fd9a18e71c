import type { LpEngine } from '../../../core/cutting/index.ts'
import { loadHighs } from './highs.ts'

export { loadGlpk } from './glpk.ts'
export { loadHighs } from './highs.ts'

/** The engine the program uses: HiGHS keeps its model and basis between solves, which measured fastest. */
export function loadEngine(): Promise<LpEngine> {
  return loadHighs()
}
