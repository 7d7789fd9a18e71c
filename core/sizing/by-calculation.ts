import { type Check, checksBesideTables } from '../checks/index.ts'
import type { Design } from '../estimate-types.ts'
import { standsInTheWay } from './known-failures.ts'
import type { SizingBasis } from './types.ts'

const NONE: ReadonlySet<string> = new Set()

/** Names of the checks of a frame that its calculation alone has to answer for: those that no table covers in any size. */
export function heldByCalculation(
  basis: SizingBasis,
  { job, layout, frame }: Pick<Design, 'job' | 'layout' | 'frame'>,
): ReadonlySet<string> {
  return basis === 'tables' ? NONE : checksBesideTables(job, layout, frame)
}

/** Checks of a design that keep its sizes from being chosen. */
export function failingIn(
  basis: SizingBasis,
  design: Pick<Design, 'job' | 'layout' | 'frame' | 'checks'>,
): readonly Check[] {
  const held = heldByCalculation(basis, design)
  return design.checks.filter((check) => standsInTheWay(check, held))
}

/** Checks that hold by calculation alone, where that has to do. */
export function holdingByCalculation(basis: SizingBasis, design: Design): readonly Check[] {
  const held = heldByCalculation(basis, design)
  return design.checks.filter(({ id, status }) => status === 'calculated only' && held.has(id))
}
