import { type Check, checksBesideTables } from '../checks/index.ts'
import type { Design } from '../estimate-types.ts'
import { standsInTheWay } from './known-failures.ts'
import type { SizingBasis } from './types.ts'

const NONE: ReadonlySet<string> = new Set()

type Checked = Pick<Design, 'job' | 'layout' | 'frame' | 'checks'>

/** Names of the checks of a frame that its calculation alone has to answer for: those that no table covers in any size. */
export function heldByCalculation(basis: SizingBasis, checked: Checked): ReadonlySet<string> {
  return basis === 'tables' ? NONE : coveredInNoSize(checked)
}

/**
 * Names of the checks that no table covers in any size, for how the members lie or for want of a page. Where nobody has
 * stated the snow the page is wanted for a load that is only taken: that asks for the statement, not for calculations.
 */
export function coveredInNoSize({ job, layout, frame, checks }: Checked): ReadonlySet<string> {
  const names = new Set(checksBesideTables(job, layout, frame))
  if (job.site.snowStated) for (const { id, paged } of checks) if (!paged) names.add(id)
  return names
}

/** Checks of a design that keep its sizes from being chosen. */
export function failingIn(basis: SizingBasis, design: Checked): readonly Check[] {
  const held = heldByCalculation(basis, design)
  return design.checks.filter((check) => standsInTheWay(check, held))
}

/** Checks that hold by calculation alone, where that has to do. */
export function holdingByCalculation(basis: SizingBasis, design: Design): readonly Check[] {
  const held = heldByCalculation(basis, design)
  return design.checks.filter(({ id, status }) => status === 'calculated only' && held.has(id))
}
