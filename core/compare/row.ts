import type { Costed } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import { countJoints, fitOf } from '../fit.ts'
import type { Pricing } from '../pricing/index.ts'
import { cents, sumCents } from '../units/index.ts'
import { wasteOf } from '../waste.ts'
import { costParts } from './cost-parts.ts'
import type { CompareRow } from './types.ts'

/** The size a row is of. */
type Size = Pick<CompareRow, 'width' | 'depth'>

/** A designed and costed size as a row of a comparison; why it has no price where it has none. */
export function rowOf(size: Size, made: Design, costed: Costed): CompareRow {
  const failing = made.checks.filter((check) => check.status === 'fails').length
  const { pricing, plans, spares } = costed
  if (pricing === null) {
    const why = costed.infeasible[0]?.message ?? costed.priceFaults[0]?.message ?? 'It has no price.'
    return { ...unpriced(size, why), failing }
  }
  return pricedRow(size, made, { plans, spares }, pricing, failing)
}

function pricedRow(
  { width, depth }: Size,
  made: Design,
  { plans, spares }: Pick<Costed, 'plans' | 'spares'>,
  { totals, ...pricing }: Pricing,
  failing: number,
): CompareRow {
  const joints = countJoints(made.takeoff.runs, plans)
  const fit = fitOf(made.takeoff.runs, plans, true)
  return {
    width,
    depth,
    cost: totals.cost,
    price: totals.price,
    perSquareFoot: totals.perSquareFoot,
    lumber: sumCents(plans.map(({ plan }) => plan.cost)),
    joints: joints.framing + joints.decking,
    framingJoints: joints.framing,
    boards: plans.reduce((sum, { plan }) => sum + plan.boards.length, 0),
    waste: wasteOf({ plans, spares }).share,
    fitsStock: fit.fitsStock,
    fitsWithDecking: fit.fitsWithDecking,
    proven: plans.every(({ plan }) => plan.status === 'proven optimal'),
    bound: sumCents(plans.map(({ plan }) => plan.bound)),
    failing,
    parts: costParts({ totals, ...pricing }),
    changes: [],
    fault: null,
  }
}

/** A size that cannot be framed or priced, with the reason. */
export function unpriced({ width, depth }: Size, fault: string): CompareRow {
  const none = cents(0)
  return {
    width,
    depth,
    cost: none,
    price: none,
    perSquareFoot: none,
    lumber: none,
    joints: 0,
    framingJoints: 0,
    boards: 0,
    waste: 0,
    fitsStock: false,
    fitsWithDecking: false,
    proven: false,
    bound: none,
    failing: 0,
    parts: [],
    changes: [],
    fault,
  }
}
